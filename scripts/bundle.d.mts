export const SCRIPTS: Readonly<Record<'arrival' | 'leaflet' | 'live' | 'liveWorker' | 'catalogue', string>>;
export const SHEETS: readonly ('sheet' | 'leaflet' | 'record' | 'public' | 'desk')[];
export const DESK_SCRIPTS: Readonly<Record<'desk' | 'worker' | 'paper', string>>;
export function bundledScript(name: keyof typeof SCRIPTS): string;
export function bundledDeskScript(name: keyof typeof DESK_SCRIPTS): Promise<string>;
export function bundledSheet(name: (typeof SHEETS)[number]): string;
