/** A described task together with what the register says of the unit, the mask and the wearer that it names. */
package org.fumewarden.register;
