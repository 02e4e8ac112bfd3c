package org.fumewarden.report.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.xml.parsers.DocumentBuilderFactory;
import org.fumewarden.report.plot.SamplePlot.Line;
import org.fumewarden.report.plot.SamplePlot.Mark;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class SamplePlotTest {
    private static final SamplePlot PLOT = new SamplePlot(
            "Fume at bench 3 <Tarn Haven>",
            "mg/m3",
            List.of(new Mark(0.05, 0.1, false), new Mark(0.2, 0.5, true), new Mark(0.8, 0.95, true)),
            1,
            Optional.of(new Line(Math.log(0.2), Math.log(2.5))),
            OptionalDouble.of(1.4),
            List.of());

    private static Document parsed(String svg) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void theSvgIsWellFormedAndSaysInWordsWhatItShows() throws Exception {
        Element svg = parsed(PLOT.svg()).getDocumentElement();
        assertEquals("img", svg.getAttribute("role"));
        assertEquals(
                "Fume at bench 3 <Tarn Haven>",
                svg.getElementsByTagName("title").item(0).getTextContent());
        String description = svg.getElementsByTagName("desc").item(0).getTextContent();
        assertEquals(
                "3 samples, 2 detected, the highest 0.8 mg/m3; limit 1 mg/m3. No detected sample is above the limit. The fitted"
                        + " geometric mean is 0.2 mg/m3, the geometric standard deviation 2.5. The upper tolerance limit is"
                        + " 1.4 mg/m3, above the limit.",
                description);
    }

    @Test
    void samplesDifferInShapeAndLinesInDashAndLabel() throws Exception {
        Document svg = parsed(PLOT.svg());
        assertEquals(2, svg.getElementsByTagName("circle").getLength());
        assertEquals(1, svg.getElementsByTagName("path").getLength());
        assertTrue(PLOT.svg().contains("stroke-dasharray=\"8 4\""));
        assertTrue(PLOT.svg().contains("stroke-dasharray=\"2 3\""));
        assertTrue(PLOT.svg().contains(">limit 1</text>"));
        assertTrue(PLOT.svg().contains(">tolerance limit 1.4</text>"));
    }

    @Test
    void higherConcentrationsStandHigherAndHigherSharesFurtherRight() {
        PlotScale scale = PlotScale.of(PLOT.extent());
        assertTrue(scale.up(0.8) > scale.up(0.2));
        assertEquals(0.5, scale.across(0.5), 1e-12);
        assertTrue(scale.across(0.95) > scale.across(0.9));
        // Equal ratios are equal distances on a log axis.
        assertEquals(scale.up(0.2) - scale.up(0.1), scale.up(0.8) - scale.up(0.4), 1e-12);
        assertEquals(List.of(0.05, 0.1, 0.2, 0.5, 1.0), scale.ticks());
    }

    @Test
    void theTextPlotShowsEverySampleAndBothLines() {
        String text = PLOT.text();
        String drawing = text.substring(text.indexOf('\n'), text.indexOf('+'));
        assertEquals(2, drawing.chars().filter(c -> c == 'o').count(), text);
        assertEquals(1, drawing.chars().filter(c -> c == 'v').count(), text);
        assertTrue(text.contains("====="), text);
        assertTrue(text.contains("-----"), text);
        assertTrue(text.contains("- limit 1  = tolerance limit 1.4"), text);
        assertTrue(text.lines().allMatch(l -> l.length() <= 76), text);
        assertTrue(text.chars().allMatch(c -> c < 128), "plain characters only");
    }

    @Test
    void aPlotWithoutFitOrToleranceSaysSo() {
        SamplePlot bare = new SamplePlot(
                "One sample",
                "mg/m3",
                List.of(new Mark(2, 0.5, true)),
                1,
                Optional.empty(),
                OptionalDouble.empty(),
                List.of());
        assertTrue(bare.svg().contains("No line was fitted. There is no upper tolerance limit."));
        assertTrue(bare.svg().contains("At least one sample is above the limit."));
        assertFalse(bare.text().contains("="));
        assertFalse(bare.text().contains("fit\n"));
    }

    @Test
    void extremeFitsStayInsideTheFrame() throws Exception {
        for (double deviation : new double[] {0, 1e-6, 0.01, 30}) {
            SamplePlot plot = new SamplePlot(
                    "Edge",
                    "mg/m3",
                    PLOT.marks(),
                    1e-4,
                    Optional.of(new Line(Math.log(0.2), deviation)),
                    OptionalDouble.of(500),
                    List.of());
            assertFalse(plot.svg().contains("NaN"));
            assertFalse(plot.svg().contains("Infinity"));
            var lines = parsed(plot.svg()).getElementsByTagName("line");
            for (int i = 0; i < lines.getLength(); i++) {
                double y = Double.parseDouble(((Element) lines.item(i)).getAttribute("y2"));
                assertTrue(y >= 19.9 && y <= 340.1, "y " + y);
            }
            assertFalse(plot.text().isEmpty());
        }
    }

    @Test
    void valuesThatHaveNoPlaceOnTheAxesAreRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new SamplePlot(
                        "x",
                        "mg/m3",
                        List.of(new Mark(0, 0.5, true)),
                        1,
                        Optional.empty(),
                        OptionalDouble.empty(),
                        List.of()));
        assertThrows(
                IllegalArgumentException.class,
                () -> new SamplePlot("x", "mg/m3", List.of(), 0, Optional.empty(), OptionalDouble.empty(), List.of()));
    }
}
