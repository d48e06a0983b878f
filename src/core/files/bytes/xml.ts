/** XML as far as MusicXML needs it, over a parser that reads well-formed XML 1.0 and opens no entities or files. */
import { MOST_SCORE_SIGNS } from '../../base/limits.ts';
import { parseXml, XmlElement } from '@rgrove/parse-xml';

/** White space that no one wrote: the parser would go through it character by character. */
const LONG_SPACE = 1000;
const SPACE = /\s+/g;

/**
 * True where a document has more elements, attributes and entities than any score needs. They are counted by their signs
 * before anything is made of them: each would take many times the memory of its text.
 */
export function isOverfull(text: string): boolean {
  let signs = 0;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if ((code === LESS_THAN || code === EQUALS || code === AMPERSAND) && ++signs > MOST_SCORE_SIGNS)
      return true;
  }
  return false;
}
const LESS_THAN = 0x3c;
const EQUALS = 0x3d;
const AMPERSAND = 0x26;

/** The root element of a document, or null when it is not well formed. */
export function readXml(text: string): XmlElement | null {
  try {
    return parseXml(text.replaceAll(SPACE, (space) => (space.length < LONG_SPACE ? space : ' '))).root;
  } catch {
    return null;
  }
}

/** The elements right inside, of this name or of any. */
export const childrenOf = (parent: XmlElement, name?: string): readonly XmlElement[] =>
  parent.children.filter(
    (child): child is XmlElement =>
      child instanceof XmlElement && (name === undefined || child.name === name),
  );

/** The first element down a path of names, or null. */
export function firstOf(parent: XmlElement, ...path: readonly string[]): XmlElement | null {
  let at: XmlElement | null = parent;
  for (const name of path) at = at && (childrenOf(at, name)[0] ?? null);
  return at;
}

/** The trimmed text of the first element down a path, or null where there is none. */
export const textOf = (parent: XmlElement, ...path: readonly string[]): string | null =>
  firstOf(parent, ...path)?.text.trim() ?? null;

/** A number from a text, or null. */
export function numberOf(text: string | null | undefined): number | null {
  const value = text === null || text === undefined || text.trim() === '' ? NaN : Number(text);
  return Number.isFinite(value) ? value : null;
}
