/** The desk shows words and has none of its own: what is said stands with the other messages. */
import { readdirSync, readFileSync } from 'node:fs';
import ts from 'typescript';
import { expect, it } from 'vitest';

const FILES = readdirSync('src/desk', { recursive: true, encoding: 'utf8' }).filter((file) =>
  /\.tsx?$/.test(file),
);

/** Where a text is no text for a reader: classes, selectors, addresses, and what is thrown at programmers. */
const NOT_SAID = /^(class|className|type|role|data-.*|accept|name|id|for|href|inputMode|autocomplete)$/;

function isSaid(node: ts.Node): boolean {
  const { parent } = node;
  if (ts.isImportDeclaration(parent) || ts.isLiteralTypeNode(parent)) return false;
  if (ts.isJsxAttribute(parent)) return !NOT_SAID.test(parent.name.getText());
  for (let at: ts.Node = parent; !ts.isSourceFile(at); at = at.parent) {
    if (ts.isJsxAttribute(at) && NOT_SAID.test(at.name.getText())) return false;
    if (ts.isNewExpression(at) && /^(Error|Fault)$/.test(at.expression.getText())) return false;
    if (
      ts.isCallExpression(at) &&
      /\b(querySelector|closest|importScripts|replace)\w*$/.test(at.expression.getText())
    )
      return false;
  }
  return true;
}

/** Keys of the keyboard, and ways of a worker. */
const NOT_WORDS = /^(Escape|Enter|Worker)$/;

/** Two words, or one that begins as a sentence does. */
const WORDS = /[A-Za-z]{2,}[,:]? [A-Za-z]{2,}|^[A-Z][a-z]{2,}[.:]?$/;

function sentences(file: string): string[] {
  const text = readFileSync(`src/desk/${file}`, 'utf8');
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true, ts.ScriptKind.TSX);
  const found: string[] = [];
  const walk = (node: ts.Node): void => {
    if (ts.isJsxText(node) && /[A-Za-z]/.test(node.text)) found.push(node.text.trim());
    const isText =
      ts.isStringLiteralLike(node) || ts.isTemplateHead(node) || ts.isTemplateMiddleOrTemplateTail(node);
    if (isText && WORDS.test(node.text.trim()) && !NOT_WORDS.test(node.text) && isSaid(node))
      found.push(node.text);
    ts.forEachChild(node, walk);
  };
  walk(source);
  return found;
}

it.each(FILES)('%s says nothing', (file) => {
  expect(sentences(file)).toEqual([]);
});
