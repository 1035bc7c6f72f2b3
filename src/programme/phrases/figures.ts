/** Captions and text alternatives of the pictures. */
import type { SceneFrame } from '../../mechanics/scene.ts';

const FRAME_WORDS: Readonly<Record<SceneFrame['name'], string>> = {
  setUp: 'Get ready',
  start: 'Start',
  end: 'Turn here',
  hold: 'Hold',
};

/** Under one picture of a figure. */
export function captionText(frame: SceneFrame): string {
  return FRAME_WORDS[frame.name];
}

/** One sentence that stands for the whole figure. */
export function altText(title: string, side: string, frames: readonly SceneFrame[]): string {
  const parts = frames.map(
    (frame) =>
      `${FRAME_WORDS[frame.name].toLowerCase()}: hip bent ${Math.max(0, frame.hipFlexionDeg)} degrees`,
  );
  return `${title}, ${side.toLowerCase()}. ${parts.join('; ')}.`;
}
