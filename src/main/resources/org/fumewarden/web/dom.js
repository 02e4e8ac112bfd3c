// Builds elements. Whatever comes from a task, a rule or the server becomes a text node, never markup.

const SVG = 'http://www.w3.org/2000/svg';

function fill(node, properties, children) {
  for (const [name, value] of Object.entries(properties ?? {})) {
    if (value === undefined || value === null || value === false) continue;
    if (name.startsWith('on')) node.addEventListener(name.slice(2), value);
    else if (name in node && !(node instanceof SVGElement) && !name.includes('-') && name !== 'list') node[name] = value;
    else node.setAttribute(name, value === true ? '' : value);
  }
  node.append(...children.flat(Infinity).filter(child => child !== undefined && child !== null && child !== false));
  return node;
}

/** An element with properties, attributes and listeners ("onclick"), and its children. */
export function el(tag, properties, ...children) {
  return fill(document.createElement(tag), properties, children);
}

export function svg(tag, properties, ...children) {
  return fill(document.createElementNS(SVG, tag), properties, children);
}

/** Marks a field as wrong, or no longer. */
export function invalid(node, wrong) {
  if (wrong) node.setAttribute('aria-invalid', 'true');
  else node.removeAttribute('aria-invalid');
}

let counter = 0;

/** An id that no other element of the page has. */
export function fresh(start) {
  counter += 1;
  return `${start}-${counter}`;
}

/** Offers bytes or text as a file to keep. */
export function keep(name, content, type) {
  const address = URL.createObjectURL(new Blob([content], { type }));
  const link = el('a', { href: address, download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(address), 10000);
}

/** A file name made of a title. */
export function fileName(title, ending) {
  const plain = title.normalize('NFKD').toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-+|-+$/g, '').slice(0, 60);
  return `${plain || 'task'}.${ending}`;
}

/** Words of a rule: they stand in the language of the rule base unless they are said in that of the page. */
export function ruleWords(tag, text, className, own) {
  return el(tag, { className: `of-rules ${className ?? ''}`.trim(), lang: own || document.documentElement.lang === 'en' ? undefined : 'en' }, text);
}
