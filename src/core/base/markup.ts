/** Text inside markup: XML, SVG and HTML share these entities. */

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Characters that no XML document may hold (XML 1.0, 2.2), and the control characters that it advises against. */
// eslint-disable-next-line no-control-regex -- these are the characters that are meant
const NOT_ALLOWED = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\ufffe\uffff]|\p{Surrogate}/gu;

/**
 * Text that may stand in an element or in an attribute between double quotes (XML 1.0, 2.4; WHATWG HTML, 13.3). What
 * no document may hold is left out.
 */
export const escaped = (text: string): string =>
  text.replace(NOT_ALLOWED, '').replace(/[&<>"]/g, (sign) => ENTITIES[sign] ?? sign);
