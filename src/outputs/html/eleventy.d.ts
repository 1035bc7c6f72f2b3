/** As much of Eleventy 3.1.8 as this house uses; the package ships no types. */
declare module '@11ty/eleventy' {
  interface UserConfig {
    addGlobalData(name: string, value: () => unknown): void;
    addTemplate(name: string, text: string, data?: Readonly<Record<string, unknown>>): void;
    setTemplateFormats(formats: readonly string[]): void;
    setUseGitIgnore(use: boolean): void;
    readonly ignores: Set<string>;
    readonly benchmarkManager: { get(group: 'Configuration'): { setIsVerbose(isVerbose: boolean): void } };
  }

  interface Rendered {
    /** Address in the site, with a slash at the end for an `index.html`. */
    readonly url: string | false;
    readonly content: string;
  }

  export default class Eleventy {
    constructor(
      input: string,
      output: string,
      options: {
        readonly configPath: false;
        readonly quietMode: boolean;
        readonly pathPrefix: string;
        readonly config: (config: UserConfig) => void;
      },
    );
    disableLogger(): void;
    /** Every page rendered, nothing written. */
    toJSON(): Promise<readonly Rendered[]>;
  }
}
