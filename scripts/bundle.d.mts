type SealedScript = 'sealed' | 'sealedWorker' | 'withdrawn' | 'withdrawnWorker';
export const SCRIPTS: Readonly<
  Record<'arrival' | 'leaflet' | 'inUse' | 'live' | 'liveWorker' | 'catalogue' | SealedScript, string>
>;
export const SHEETS: readonly ('sheet' | 'leaflet' | 'record' | 'public' | 'sealed' | 'desk')[];
export const DESK_SCRIPTS: Readonly<Record<'yaml' | 'desk' | 'worker' | 'later' | 'paper' | 'post', string>>;
export function bundledScript(name: keyof typeof SCRIPTS): string;
export function bundledDeskScript(name: keyof typeof DESK_SCRIPTS): Promise<string>;
export const OTHERS_WORDS: RegExp;
export function builtDeskScript(
  name: keyof typeof DESK_SCRIPTS,
): Promise<{ readonly text: string; readonly sources: readonly string[] }>;
export function bundledSheet(name: (typeof SHEETS)[number]): string;
