// The sheet of the server, shown as it is printed: the same page on the screen, on paper and in the file.

import { askText } from './server.js';
import { el } from './dom.js';
import { state } from './state.js';
import { say } from './words.js';

/** Tags that would be landmarks or headings of the page around the sheet, with what takes their place. */
const TAGS = { HEADER: 'div', MAIN: 'div', FOOTER: 'div', BODY: 'div', H1: 'h3', H2: 'h4', H3: 'h5', SECTION: 'div' };

function copy(node) {
  if (node.nodeType === Node.TEXT_NODE) return document.createTextNode(node.data);
  if (node.nodeType !== Node.ELEMENT_NODE || node.localName === 'style' || node.localName === 'script') return document.createTextNode('');
  const tag = TAGS[node.tagName.toUpperCase()];
  const made = tag ? document.createElement(tag) : document.createElementNS(node.namespaceURI, node.localName);
  for (const { name, value } of node.attributes) {
    if (!name.startsWith('on') && name !== 'aria-labelledby') made.setAttribute(name, value);
  }
  if (tag) made.classList.add(`is-${node.localName}`);
  made.append(...[...node.childNodes].map(copy));
  return made;
}

/** The style of the sheet for the tags that took the place of others; on the screen the sheet stays paper. */
function style(text) {
  const light = text.replace(/@media screen and \(prefers-color-scheme: dark\) \{[\s\S]*?\n\}/, '').replace(/@page \{[\s\S]*?\}\s*\}/, '');
  return light.replace(/(^|[\s,}])(html)(?=[\s{])/g, '$1:host').replace(/(^|[\s,}>])(body|h1|h2|h3|footer|header|section)(?=[\s{,:.])/g, '$1.is-$2');
}

let box = null;
let newest = 0;
let shownFor = '';

/** The sheet of the task; it fills itself when it comes. Until then the last one keeps its place under words that say so, or at first something short. */
export function paper(annex, short) {
  box ??= el('div', { className: 'sheet', role: 'region' });
  if (!box.shadowRoot) box.replaceChildren(short);
  const asked = { task: state.task, language: document.documentElement.lang, detail: annex };
  const key = JSON.stringify(asked);
  const deciding = el('p', { className: 'deciding', role: 'status' }, key === shownFor ? '' : say(box.shadowRoot ? 'ui.deciding' : 'ui.deciding.first'));
  const own = newest += 1;
  const labels = { 'aria-busy': String(key !== shownFor), 'aria-label': say('sheet.kind'), lang: asked.language };
  Object.entries(labels).forEach(([key, value]) => box.setAttribute(key, value));
  askText('api/sheet', asked).then(html => {
    if (own !== newest) return;
    const [styles] = /<style>[\s\S]*?<\/style>/.exec(html);
    const read = new DOMParser().parseFromString(html.replace(styles, ''), 'text/html');
    const root = box.shadowRoot ?? box.attachShadow({ mode: 'open' });
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(`${style(styles.slice('<style>'.length, -'</style>'.length))}\n@media screen { .page .is-section { overflow-x: auto; } }`);
    box.replaceChildren();
    root.adoptedStyleSheets = [sheet];
    root.replaceChildren(copy(read.body));
    box.setAttribute('aria-busy', 'false');
    shownFor = key;
    deciding.textContent = '';
  }, () => { deciding.textContent = say('ui.advice.none'); });
  return el('div', {}, deciding, box);
}
