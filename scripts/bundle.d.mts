export const SCRIPTS: Readonly<
  Record<'arrival' | 'leaflet' | 'inUse' | 'live' | 'liveWorker' | 'catalogue', string>
>;
export const SHEETS: readonly ('sheet' | 'leaflet' | 'record' | 'public')[];
export function bundledScript(name: keyof typeof SCRIPTS): string;
export function bundledSheet(name: (typeof SHEETS)[number]): string;
