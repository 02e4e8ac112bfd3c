package org.fumewarden.codes;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

/** Spoilt tables and cards of codes are read or refused in words, never with a fault. */
@Timeout(value = 1, unit = TimeUnit.HOURS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
final class SpoiltTablesTest {
    private static final RuleFolder SHIPPED = RuleFolder.shipped();

    @Test
    void tables() {
        Spoilt.run("tables", 1000, files("/tables/"), bytes -> {
            Located root = YamlFiles.parse("table.yaml", YamlFiles.text("table.yaml", bytes));
            new TableReader("table.yaml", root).read();
            root.settle();
        });
    }

    @Test
    void cards() {
        Spoilt.run("cards of codes", 250, files("/code.yaml"), bytes -> {
            Located root = YamlFiles.parse("code.yaml", YamlFiles.text("code.yaml", bytes));
            String id = root.isMap() && root.entries().get("id") != null
                    ? root.entries().get("id").plain().toString()
                    : "";
            CodeCard.read(id, root);
            root.settle();
        });
    }

    private static List<byte[]> files(String part) {
        List<byte[]> files = SHIPPED.files().entrySet().stream()
                .filter(e -> ("/" + e.getKey()).contains(part) && e.getKey().endsWith(".yaml"))
                .map(java.util.Map.Entry::getValue)
                .filter(b -> new String(b, StandardCharsets.UTF_8).length() < 20_000)
                .toList();
        return files;
    }
}
