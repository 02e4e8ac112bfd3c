/** Facts and conclusions: the words that rules read and write. Nothing here computes policy. */
package org.fumewarden.model;
