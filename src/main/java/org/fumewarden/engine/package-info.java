/** Runs the rules, phase after phase, and writes down every step. The only package that knows Drools. */
package org.fumewarden.engine;
