/** Who holds a lock: told well enough that a number which was given to another process since is not taken for the holder. */
import { readFileSync, readlinkSync } from 'node:fs';
import { hostname } from 'node:os';

export interface Holder {
  /** This start of this machine, as one container sees it: process numbers mean something here alone. */
  readonly machine: string;
  readonly pid: number;
  /** When the process began, in the machine's own count; null where a system does not tell. */
  readonly began: string | null;
}

export function thisHolder(): Holder {
  return { machine: machine(), pid: process.pid, began: beganOf(process.pid) };
}

/** Whether the process of a holder goes on; null when nobody here can tell: it runs elsewhere, or may be another by now. */
export function lives({ machine: where, pid, began }: Holder): boolean | null {
  if (where !== machine()) return null;
  if (!answers(pid)) return false;
  const now = beganOf(pid);
  return began === null || now === null ? null : now === began;
}

/** Whether a process of that number can be signalled. Not being allowed to means that it lives. */
export function answers(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

/** A holder as it was written; null for what is none. */
export function holderOf(text: string): Holder | null {
  try {
    const { machine: where, pid, began } = JSON.parse(text) as Partial<Holder>;
    const isOne = typeof where === 'string' && Number.isInteger(pid) && (pid ?? 0) > 0;
    return isOne ? { machine: where, pid: pid ?? 0, began: typeof began === 'string' ? began : null } : null;
  } catch {
    return null;
  }
}

// Two containers of one machine share its start but not its process numbers, for which Linux has names of its own.
function machine(): string {
  const start = told(() => readFileSync('/proc/sys/kernel/random/boot_id', 'utf8').trim());
  const numbers = told(() => readlinkSync('/proc/self/ns/pid'));
  return [hostname(), start, numbers].join(' ');
}

// Field 22 of proc_pid_stat(5); the name in brackets before it may hold anything.
function beganOf(pid: number): string | null {
  const stat = told(() => readFileSync(`/proc/${pid}/stat`, 'utf8'));
  return stat === '' ? null : (stat.slice(stat.lastIndexOf(')') + 2).split(' ')[19] ?? null);
}

function told(ask: () => string): string {
  try {
    return ask();
  } catch {
    return '';
  }
}
