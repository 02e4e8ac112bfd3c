package org.fumewarden.task;

import java.util.Arrays;
import java.util.Locale;
import java.util.Set;

/** Names that ask for the health, age or origin of the wearer, of which nothing but the clearance is kept. */
public final class Health {
    public static final String MAYBE =
            "leave it out: the health of the wearer is the matter of the doctor. All that is asked is"
                    + " wearer.medically-cleared, true, false or powered-only.";

    private static final Set<String> WORDS = Set.of(
            "age",
            "aged",
            "allergic",
            "allergies",
            "allergy",
            "angina",
            "asthma",
            "asthmatic",
            "birthday",
            "birth",
            "blood",
            "bmi",
            "born",
            "breastfeeding",
            "breathless",
            "claustrophobia",
            "condition",
            "conditions",
            "copd",
            "diabetes",
            "diabetic",
            "diagnosis",
            "disability",
            "disabled",
            "disease",
            "diseases",
            "dob",
            "drugs",
            "epilepsy",
            "epileptic",
            "gender",
            "health",
            "healthy",
            "heart",
            "hypertension",
            "ill",
            "illness",
            "illnesses",
            "lung",
            "lungs",
            "medical",
            "medication",
            "medications",
            "medicine",
            "medicines",
            "nationality",
            "nursing",
            "origin",
            "pacemaker",
            "pregnancy",
            "pregnant",
            "race",
            "religion",
            "sex",
            "sick",
            "sickness",
            "smoker",
            "smokes",
            "smoking",
            "spirometry",
            "symptoms",
            "vaccinated",
            "weight");

    private Health() {}

    /** Whether the name of a field or question asks for it. */
    public static boolean isMeant(String name) {
        return Arrays.stream(name.toLowerCase(Locale.ROOT).split("[^a-z]+")).anyMatch(WORDS::contains);
    }
}
