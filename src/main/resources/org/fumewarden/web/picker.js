// A long list of answers: type any word for what you mean, press the answer. What was chosen stands alone and can be changed.

import { el, fresh } from './dom.js';
import { state } from './state.js';
import { say } from './words.js';

/** A word without case, blanks, hyphens, points and brackets, as the tables of words have it. */
export function plain(word) {
  return word.trim().toLowerCase().replace(/[\s_./()[\],'\u2019-]+/g, '-').replace(/^-+|-+$/g, '');
}

/** How well a word finds an option: 3 exactly, 2 by another word for it, 1 by a part; 0 not at all. */
function likeness(option, sought, aliases) {
  if (plain(option.id) === sought || plain(option.name) === sought) return 3;
  const words = Object.entries(aliases).filter(([, ids]) => ids.includes(option.id)).map(([word]) => word);
  if (words.includes(sought)) return 2;
  return plain(option.name).includes(sought) || plain(option.id).includes(sought) || words.some(word => word.startsWith(sought)) ? 1 : 0;
}

/** The options that a typed word may mean, the best first. */
export function matches(options, typed, aliases) {
  const sought = plain(typed);
  if (sought === '') return options;
  const found = options.map(option => ({ option, rank: likeness(option, sought, aliases ?? {}) })).filter(f => f.rank > 0).sort((a, b) => b.rank - a.rank);
  return found.filter(f => f.rank > 1 || found[0].rank <= 1).map(f => f.option);
}

/** The control. Gives its node. */
export function picker(labelled, options, value, heading, changed, unfolded) {
  const node = el('div', { className: 'picker', role: 'group', 'aria-labelledby': labelled.id });
  const listId = fresh('options');
  let chosen = value;
  let wide = Boolean(unfolded);

  function choose(id) {
    chosen = id;
    changed(id);
    draw();
    node.querySelector('button')?.focus();
  }
  function shut(option) {
    return [el('b', { className: 'chosen', lang: option.lang }, option.name), ' ',
      el('button', { type: 'button', className: 'quiet', 'aria-label': `${say('ui.change.it')}: ${labelled.words}`, onclick: () => { wide = true; open(); node.querySelector('input').focus(); } }, say('ui.change.it'))];
  }
  function open() {
    const list = el('ul', { className: 'options', id: listId });
    const count = el('span', { className: 'unseen', role: 'status' });
    const input = el('input', { type: 'search', autocomplete: 'off', spellcheck: false, maxLength: 60, placeholder: say('ui.pick.type'), 'aria-labelledby': labelled.id,
      'aria-describedby': labelled.describedBy, 'aria-controls': listId, oninput: fill, onfocus: () => { wide = true; list.hidden = false; }, onkeydown: event => {
        const found = matches(options, input.value, state.vocabulary.aliases[heading]);
        if (event.key === 'Enter' && input.value.trim() !== '') {
          event.preventDefault();
          if (found.length === 1) choose(found[0].id);
          else if (found.length === 0) { chosen = input.value.trim(); changed(chosen); }
        }
      } });
    function fill() {
      const found = matches(options, input.value, state.vocabulary.aliases[heading]);
      count.textContent = input.value ? say('ui.pick.count', found.length) : '';
      list.replaceChildren(...found.map(o => el('li', {}, el('button', { type: 'button', lang: o.lang, 'aria-pressed': String(o.id === chosen), onclick: () => choose(o.id) }, o.name))));
      if (found.length === 0) list.append(el('li', { className: 'hint' }, say('ui.pick.none')));
    }
    fill();
    list.hidden = !wide;
    node.replaceChildren(input, count, list);
  }
  function draw() {
    const option = options.find(o => o.id === chosen);
    if (option) node.replaceChildren(...shut(option));
    else open();
  }
  draw();
  if (chosen !== undefined && !options.some(o => o.id === chosen)) node.querySelector('input').value = chosen;
  return { node, unfold() { if (!wide && !options.some(o => o.id === chosen)) { wide = true; open(); } } };
}
