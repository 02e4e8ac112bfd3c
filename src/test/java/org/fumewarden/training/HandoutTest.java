package org.fumewarden.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.fumewarden.report.PdfSheet;
import org.fumewarden.report.html.Words;
import org.fumewarden.report.sheet.HtmlForm;
import org.fumewarden.report.sheet.Sheet;
import org.fumewarden.report.sheet.TextForm;
import org.junit.jupiter.api.Test;

class HandoutTest {
    private static final Words ENGLISH = Words.in("en");
    private static final List<Round> ROUNDS = List.of(
            Room.maker("en").made("gb", Room.DAY, Topic.GAS, 2, 3),
            Room.maker("en").made("gb", Room.DAY, Topic.FIT, 1, 3));

    @Test
    void tasksStandOnOneSideAndAnswersOnTheOther() throws IOException {
        Sheet sheet = Handout.of(ROUNDS, ENGLISH);
        byte[] pdf = PdfSheet.write(HtmlForm.write(sheet));
        String right = ROUNDS.get(0).items().get(1).rightChoice().says();
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDFTextStripper text = new PDFTextStripper();
            String all = text.getText(document).replaceAll("\\s+", " ");
            int answers = all.indexOf("Answers for the trainer");
            assertTrue(answers > 0, all);
            assertFalse(all.substring(0, answers).contains("forget"), "no mistake is named on the side of the room");
            assertTrue(all.substring(answers).contains(right), right);
            text.setStartPage(document.getNumberOfPages());
            assertTrue(text.getText(document).contains("licensed or competent person")
                    || all.contains("competent person decide"));
        }
    }

    @Test
    void theCertificateNamesTopicsAndTheCommandThatLogsTheTraining() {
        String text = TextForm.write(Handout.certificate(ROUNDS, ENGLISH, "2026-03-02"))
                .replaceAll("\\s+", " ");
        assertTrue(text.contains("Gases, Fit"), text);
        assertTrue(
                text.contains("fumewarden entry training content=\"Gases, Fit\" result=passed on=2026-03-02 item=ID"),
                text);
        assertTrue(text.contains("does not show that they are fit"), text);
        assertEquals("Gases, Fit", Handout.topics(ROUNDS, ENGLISH));
    }
}
