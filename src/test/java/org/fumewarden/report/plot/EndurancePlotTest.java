package org.fumewarden.report.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalDouble;
import javax.xml.parsers.DocumentBuilderFactory;
import org.fumewarden.endurance.CurvePoint;
import org.fumewarden.endurance.EnduranceCurve;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class EndurancePlotTest {
    private static final List<EnduranceCurve> CURVES =
            List.of(curve("standard <pack>", 0, 9, 1, 8, 3, 4), curve("long & heavy", 0, 14, 1, 12.5, 3, 7.5));

    @Test
    void svgIsWellFormedAndTellsItsContentInWords() throws Exception {
        Element root = parse(EndurancePlot.svg(CURVES, 8, OptionalDouble.of(1)));
        assertEquals("img", root.getAttribute("role"));
        assertEquals("title", root.getFirstChild().getNextSibling().getNodeName(), "its name comes first");
        String description = root.getElementsByTagName("desc").item(0).getTextContent();
        assertTrue(description.contains("standard <pack>: 9 h at point 0"), description);
        assertTrue(description.contains("The shift is 8 h"), description);
    }

    @Test
    void packsDifferByDashAndNotByColour() {
        String svg = EndurancePlot.svg(CURVES, 8, OptionalDouble.empty());
        assertTrue(svg.contains("stroke-dasharray=\"8 4\""));
        assertFalse(svg.replaceAll("#(222|fff)", "").contains("#"), "only black and white");
    }

    @Test
    void shiftLineStandsAtItsHours() throws Exception {
        AxisCanvas canvas = new AxisCanvas(3, 14);
        String svg = EndurancePlot.svg(CURVES, 8, OptionalDouble.empty());
        // 14 h goes up to 20 h; 8 h is at 340 - 8/20 * 290 = 224
        assertEquals(224, canvas.y(8), 1e-9);
        assertTrue(svg.contains("y1=\"224.0\" x2=\"620.0\" y2=\"224.0\""), svg);
    }

    @Test
    void textNamesEveryStageAndWhetherItLasts() {
        String text = EndurancePlot.text(CURVES, 8);
        assertEquals(1 + 2 + 6, text.lines().count());
        assertTrue(text.lines().anyMatch(line -> line.contains("point 1      8 h") && line.endsWith("lasts")), text);
        assertTrue(
                text.lines().anyMatch(line -> line.contains("point 3      4 h") && line.endsWith("too short")), text);
    }

    @Test
    void breakthroughMarksTheChangeTimeAndTheAllowedShare() throws Exception {
        List<CurvePoint> points = List.of(new CurvePoint(60, 0.01), new CurvePoint(66, 0.03), new CurvePoint(72, 0.1));
        Element root = parse(BreakthroughPlot.svg("toluene", points, 62.9, 0.05));
        String description = root.getElementsByTagName("desc").item(0).getTextContent();
        assertTrue(description.contains("1 % at 60 min"), description);
        assertTrue(description.contains("Change the filter by 62 min"), description);
        String text = BreakthroughPlot.text("toluene", points, 62.9, 0.05);
        assertTrue(text.lines().skip(1).findFirst().orElseThrow().endsWith("before the change"));
        assertTrue(text.lines().skip(3).findFirst().orElseThrow().endsWith("after the change"));
    }

    @ParameterizedTest(name = "{0} goes up to {1}")
    @CsvSource({"8, 10", "10, 10", "14, 20", "0.03, 0.05", "230, 250", "0, 1", "NaN, 1", "1, 1"})
    void axesEndAtARoundNumber(double value, double top) {
        assertEquals(top, AxisCanvas.ceiling(value), 1e-9);
    }

    private static Element parse(String svg) throws Exception {
        Document document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
        return document.getDocumentElement();
    }

    private static EnduranceCurve curve(String pack, double... numbers) {
        return new EnduranceCurve(
                pack,
                List.of(
                        new EnduranceCurve.Point(numbers[0], numbers[1]),
                        new EnduranceCurve.Point(numbers[2], numbers[3]),
                        new EnduranceCurve.Point(numbers[4], numbers[5])),
                EnduranceCurve.Scale.OWN,
                true);
    }
}
