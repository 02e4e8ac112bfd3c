// One line that says what was put in place of something, and takes it back.

import { el } from './dom.js';
import { emit, on, state } from './state.js';
import { say } from './words.js';

/** The line; empty while there is nothing to take back. */
export function undoLine() {
  const line = el('div', { className: 'undo', role: 'status' });
  const draw = () => {
    const undo = state.undo;
    line.replaceChildren(...(undo ? [el('span', {}, undo.words), ' ', el('button', { type: 'button', className: 'quiet', onclick: () => {
      state.undo = null;
      undo.run();
      emit('undo');
    } }, say('ui.undo'))] : []));
  };
  on('replaced', draw);
  on('undo', draw);
  draw();
  return line;
}
