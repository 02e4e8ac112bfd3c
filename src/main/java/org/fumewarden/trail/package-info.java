/** The advice trail: which rule concluded what, from what, by which clause. */
package org.fumewarden.trail;
