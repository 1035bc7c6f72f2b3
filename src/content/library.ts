/** What content hands on: everything parsed once, in types that cannot be wrong. */
import type { Dose, Tempo, ChangeKind } from '../dosing/dose.ts';
import type { Caps } from '../mechanics/cap.ts';
import type { DrawnPicture } from '../mechanics/drawnPose.ts';
import type { Movement } from '../mechanics/movement.ts';
import type { Prop, RestingHands } from '../mechanics/scene.ts';
import type { IsoDate } from '../units/date.ts';
import type { Mark, Source } from '../units/source.ts';
import type { Dress } from './dress.ts';
import type { Extension } from './extending/extension.ts';
import type { Origin } from './layers.ts';
import type { ProseSection } from './prose/block.ts';
import type { AdviceFrontMatter } from './schema/advice.ts';
import type { ClinicFrontMatter } from './schema/clinic.ts';
import type { ConsultFrontMatter } from './schema/consult.ts';
import type { ExerciseFrontMatter } from './schema/exercise.ts';
import type { PageFrontMatter } from './schema/page.ts';
import type { ProtocolFrontMatter, SlotFrontMatter, StageFrontMatter } from './schema/protocol.ts';
import type { CannotDo, Equipment, Language, Muscle, Position } from './schema/words.ts';

export interface ExerciseCard {
  readonly id: string;
  readonly title: string;
  /** What colleagues call it. */
  readonly alsoCalled: readonly string[];
  readonly muscles: readonly Muscle[];
  readonly kind: ExerciseFrontMatter['kind'];
  readonly positions: readonly Position[];
  /** Null for a card without a pose: it then takes no part in squeeze or pull. */
  readonly movement: Movement | null;
  /** Hip flexion of a card without a pose, with its mark; null for a posed card. */
  readonly statedHipFlexion: { readonly deg: number; readonly mark: Mark } | null;
  /** `each`: one leg after the other, so sets count for both sides. */
  readonly legs: 'together' | 'each';
  /** The legs take turns within a set. */
  readonly alternating: boolean;
  /** Height in metres from which the weight is lifted; null when it is handed over or put on lying down. */
  readonly pickUpHeightM: number | null;
  readonly props: readonly Prop[];
  /** Where empty hands rest in the picture; null where pose and props say it. */
  readonly hands: RestingHands | null;
  /** What is drawn of a card without a pose; null for a posed card, and where nobody has drawn it. */
  readonly picture: DrawnPicture | null;
  readonly equipment: readonly Equipment[];
  readonly needs: readonly CannotDo[];
  readonly tempo: Tempo;
  readonly easier: string | null;
  readonly harder: string | null;
  /** A first session has few repetitions of it, as its words say. */
  readonly fewAtFirst: boolean;
  /** The author's own landmark, where the pose gives none. */
  readonly landmark: string | null;
  /** Pictures that stand beside the card's file. */
  readonly photos: readonly {
    readonly file: string;
    readonly alt: string;
    readonly takenBy?: string | undefined;
  }[];
  readonly cautions: readonly string[];
  /** Sentences that are said only where there is a weight. */
  readonly withWeight: readonly string[];
  readonly evidence: readonly Source[];
  readonly changed: ExerciseFrontMatter['changed'];
  readonly reviewedOn: IsoDate;
  readonly nextReviewOn: IsoDate;
  readonly body: readonly ProseSection[];
}

export interface ProgressionEntry {
  readonly change: ChangeKind;
  /** Null: by the kit (load) or to the stage's end. */
  readonly by: number | null;
  readonly to: number | null;
}

export type Slot = Omit<SlotFrontMatter, 'dose' | 'progression'> & {
  /** Its tempo is null where the card's own is used. */
  readonly dose: Dose;
  readonly doseSource: Source;
  readonly progression: readonly ProgressionEntry[];
};

export type Stage = Omit<StageFrontMatter, 'slots' | 'caps'> & {
  readonly slots: readonly Slot[];
  /** The cap on the protocol's angle beside those of the model. */
  readonly caps: Omit<Caps, 'supportMargin'>;
};

export type Protocol = Omit<ProtocolFrontMatter, 'stages'> & {
  readonly id: string;
  readonly stages: readonly Stage[];
  readonly body: readonly ProseSection[];
  /** What it changes of the protocol it extends; null where it is whole by itself. */
  readonly extension: Extension | null;
};

export type AdviceCard = AdviceFrontMatter & { readonly id: string; readonly body: readonly ProseSection[] };

/** A page of the clinic's own. */
export type OwnPage = PageFrontMatter & { readonly id: string; readonly body: readonly ProseSection[] };

export type Clinic = ClinicFrontMatter & { readonly body: readonly ProseSection[] };

export type Consult = ConsultFrontMatter & {
  /** The file's id, `<alias>-r<revision>`. */
  readonly id: string;
  readonly notes: readonly ProseSection[];
};

export interface Library {
  readonly exercises: ReadonlyMap<string, ExerciseCard>;
  readonly advice: ReadonlyMap<string, AdviceCard>;
  readonly protocols: ReadonlyMap<string, Protocol>;
  /** Cards whose words stand in files of a language of their own; `libraryIn` puts them in their places. */
  readonly inLanguage: ReadonlyMap<Language, Pick<LibraryFiles, 'exercises' | 'advice'>>;
  /** Those of the uppermost folder alone, in the order of the menu. */
  readonly pages: readonly OwnPage[];
  readonly dress: Dress;
  readonly clinic: Clinic;
  /** What an upper folder added or replaced, by folder and id, for example `exercises/hip-hinge`. */
  readonly origins: ReadonlyMap<string, Origin>;
  /** SHA-256 (hex, first 12) over the library files in order of their names; says which library a leaflet was made from. */
  readonly version: string;
}

/** What each file of a library says for itself; there even when the library as a whole has an error. */
export type LibraryFiles = Pick<Library, 'exercises' | 'advice' | 'protocols'>;

/** What a consult may name; a library is one. A file that is there but broken is known by its id alone. */
export interface Nameable {
  readonly exercises: ReadonlyMap<string, ExerciseCard | null>;
  readonly protocols: ReadonlyMap<string, Protocol | null>;
  /** Null when it is not there, or broken. */
  readonly clinic: Clinic | null;
}
