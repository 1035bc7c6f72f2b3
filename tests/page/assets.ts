/** The page's own files read from the working copy, the script translated as the build translates it. */
import { readFileSync } from 'node:fs';
import ts from 'typescript';
import { pageAssets, type PageFiles } from '../../src/page/assets.ts';

const read = (path: string) => readFileSync(path, 'utf8');
const base64 = (path: string) => readFileSync(path).toString('base64');

const CLIENT = 'src/page/client';

export const files: PageFiles = {
  tokens: JSON.parse(read('shared/tokens.json')) as PageFiles['tokens'],
  styles: {
    sheet: read('templates/styles/sheet.css'),
    leaflet: read('templates/styles/leaflet.css'),
    record: read('templates/styles/record.css'),
    public: read('templates/styles/public.css'),
  },
  fonts: [
    { weight: 400, base64: base64('shared/fonts/atkinson-hyperlegible-next-latin-400-normal.woff2') },
    { weight: 700, base64: base64('shared/fonts/atkinson-hyperlegible-next-latin-700-normal.woff2') },
  ],
  arrival: translated('arrival.ts'),
  script: translated('leaflet.ts'),
  catalogue: ['words', 'match', 'address', 'catalogue'].map((name) => translated(`catalogue/${name}.ts`)),
};

export const assets = pageAssets(files);

function translated(file: string): string {
  const { config: json } = ts.readConfigFile(`${CLIENT}/tsconfig.json`, read) as {
    config: { compilerOptions: object };
  };
  const { options } = ts.convertCompilerOptionsFromJson(json.compilerOptions, '.');
  return ts.transpileModule(read(`${CLIENT}/${file}`), { compilerOptions: options }).outputText;
}
