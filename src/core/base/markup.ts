/** Text inside markup: XML, SVG and HTML share these entities. */

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Text that may stand in an element or in an attribute between double quotes (XML 1.0, 2.4; WHATWG HTML, 13.3). */
export const escaped = (text: string): string => text.replace(/[&<>"]/g, (sign) => ENTITIES[sign] ?? sign);
