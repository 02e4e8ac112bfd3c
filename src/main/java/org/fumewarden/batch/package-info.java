/** Many tasks in, one line of advice each out, in the order of the input. */
package org.fumewarden.batch;
