package org.fumewarden.report;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import org.fumewarden.advice.AccountLine;
import org.fumewarden.advice.Advice;
import org.fumewarden.advice.Reason;
import org.fumewarden.model.Account;
import org.fumewarden.model.Settlement;

/** The accounts of an advice as JSON, written and read. */
final class AccountJson {
    private AccountJson() {}

    static void write(Advice advice, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("accounts");
        for (AccountLine line : advice.accounts()) {
            Account account = line.account();
            json.writeStartObject();
            json.writeStringField("agent", account.agent());
            json.writeStringField("averaging", account.averaging());
            json.writeStringField("kind", account.kind().key());
            number("level", account.level(), json);
            number("against", account.against(), json);
            if (!account.unit().isEmpty()) {
                json.writeStringField("unit", account.unit());
            }
            number("factor", account.factor(), json);
            json.writeStringField("by", account.by());
            if (!line.countedAs().isEmpty()) {
                json.writeStringField("counted-as", line.countedAs());
            }
            json.writeStringField("held-against", line.heldAgainst());
            json.writeStringField("step", line.reason().step());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void number(String name, Optional<BigDecimal> value, JsonGenerator json) throws IOException {
        if (value.isPresent()) {
            json.writeNumberField(name, value.get());
        }
    }

    /** An account without the rule behind its step, which stays in the trail of the file. */
    static AccountLine read(JsonNode node) {
        Account account = new Account(
                node.path("agent").asText(),
                node.path("averaging").asText(),
                Arrays.stream(Settlement.values())
                        .filter(s -> s.key().equals(node.path("kind").asText()))
                        .findFirst()
                        .orElse(Settlement.OPEN),
                number(node.path("level")),
                number(node.path("against")),
                node.path("unit").asText(),
                node.path("by").asText());
        Reason reason = new Reason(
                node.path("step").asText(), "", account.agent(), "", "", "", "", AdviceReader.confidence(node));
        return new AccountLine(
                account,
                node.path("name").asText(),
                node.path("counted-as").asText(),
                node.path("held-against").asText(),
                reason);
    }

    private static Optional<BigDecimal> number(JsonNode node) {
        return node.isNumber() ? Optional.of(node.decimalValue()) : Optional.empty();
    }
}
