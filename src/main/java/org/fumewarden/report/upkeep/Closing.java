package org.fumewarden.report.upkeep;

/** What stands at the foot of every sheet. */
final class Closing {
    /** In English; every sheet says it in its language. */
    static final String WORDS =
            "Local codes and a licensed or competent person decide. When anything on this sheet and the"
                    + " manufacturer's instructions differ, follow the stricter. If in doubt, leave the area and do not use the equipment.";

    private Closing() {}
}
