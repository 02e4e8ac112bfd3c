/** What-if questions: the same task with something changed, decided again by the engine, never guessed. */
package org.fumewarden.whatif;
