package org.fumewarden.batch;

import java.util.ArrayList;
import java.util.List;

/**
 * Tasks of Tarn Haven for batches: each is a little different, and nine thousand in a row have nine thousand levels of
 * manganese, so that nothing which rests on the level is met again.
 */
public final class BatchTasks {
    private static final String[] PROCESSES = {"mag-solid-wire", "manual-metal-arc", "tig"};
    private static final String[] METALS = {"mild-steel", "stainless-steel"};

    private BatchTasks() {}

    public static String task(int number) {
        return "{\"title\":\"Bay " + number + "\",\"code\":\"" + (number % 7 == 3 ? "us" : "gb")
                + "\",\"on\":\"2026-03-02\",\"task\":{\"process\":\"" + PROCESSES[number % PROCESSES.length]
                + "\",\"base-metal\":\"" + METALS[number % METALS.length]
                + "\",\"coating\":\"none\",\"place\":\"indoors\",\"extraction\":\"none\"},"
                + "\"atmosphere\":{\"oxygen\":\"20.9 %\",\"explosive\":false,\"immediately-dangerous\":false},"
                + "\"exposures\":[{\"agent\":\"manganese-respirable\",\"twa\":\"0." + (1_000 + number * 7_919L % 9_000)
                + " mg/m3\"}],\"wearer\":{\"facial-hair\":" + (number % 5 == 0)
                + ",\"fit-tested\":true,\"medically-cleared\":true}}";
    }

    /** A task that answers every question, so that its advice is complete: the bracket shop of the tours, measured anew for each number. */
    public static String complete(int number) {
        return "{\"title\":\"Bench " + number + "\",\"code\":\"gb\",\"on\":\"2026-03-02\",\"task\":{"
                + "\"process\":\"mag-solid-wire\",\"base-metal\":\"stainless-steel\",\"coating\":\"none\",\"filler\":\"plain\","
                + "\"place\":\"indoors\",\"extraction\":\"none\",\"ventilation\":\"general\",\"time-on-task\":\"PT4H\","
                + "\"intensity\":\"regular\",\"wear-time\":\"PT2H\",\"shift\":\"PT8H\",\"work-rate\":\"moderate\",\"purpose\":\"work\"},"
                + "\"atmosphere\":{\"oxygen\":\"20.9 %\",\"explosive\":false,\"immediately-dangerous\":false,\"oil-mist\":false,"
                + "\"eye-irritation\":false},\"exposures\":[{\"agent\":\"chromium-vi\",\"twa\":\"0.0"
                + (1_000 + number * 7_919L % 9_000) + " mg/m3\"},{\"agent\":\"nickel\",\"twa\":\"0.09 mg/m3\"},"
                + "{\"agent\":\"manganese-respirable\",\"twa\":\"0." + (1_000 + number * 6_701L % 9_000)
                + " mg/m3\"},{\"agent\":\"ozone\",\"stel\":\"0.08 ppm\"},{\"agent\":\"carbon-monoxide\",\"twa\":\"2 ppm\"}],"
                + "\"wearer\":{\"facial-hair\":false,\"spectacles\":" + (number % 5 == 0)
                + ",\"fit-tested\":true,\"medically-cleared\":true,\"trained\":true}}";
    }

    /** A mix of good lines, bad lines of several kinds and blank lines. */
    public static List<String> mixed(int count) {
        List<String> lines = new ArrayList<>();
        for (int i = 1; i <= count; i++) {
            switch (i % 29) {
                case 5 -> lines.add("");
                case 11 -> lines.add(task(i).substring(0, 60));
                case 17 -> lines.add(task(i).replace("indoors", "on the moon"));
                case 23 -> lines.add("not a task");
                default -> lines.add(task(i));
            }
        }
        return lines;
    }
}
