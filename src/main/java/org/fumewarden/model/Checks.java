package org.fumewarden.model;

import java.math.BigDecimal;
import org.apache.commons.lang3.StringUtils;
import org.apache.commons.lang3.Validate;

/** Constructor checks: facts refuse blanks, nulls and negative amounts. */
final class Checks {
    private Checks() {}

    static void text(String name, String value) {
        Validate.isTrue(StringUtils.isNotBlank(value), "%s must not be blank", name);
    }

    static void present(String name, Object value) {
        Validate.notNull(value, "%s must be given", name);
    }

    static void notNegative(String name, BigDecimal value) {
        present(name, value);
        Validate.isTrue(value.signum() >= 0, "%s must not be negative but is %s", name, value);
    }

    static void positive(String name, BigDecimal value) {
        present(name, value);
        Validate.isTrue(value.signum() > 0, "%s must be above zero but is %s", name, value);
    }
}
