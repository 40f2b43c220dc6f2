/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Consumer;
import org.ferrule.picture.Box;
import org.ferrule.picture.Dash;
import org.ferrule.picture.Fill;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Hatch;
import org.ferrule.picture.Ink;
import org.ferrule.picture.Outline;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Stroke;
import org.ferrule.picture.Text;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.TextStyle;
import org.ferrule.picture.contract.SamplePictures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

class SvgWriterTest {

    private final String sample = text(SamplePictures.everything());

    SvgWriterTest() throws IOException {
    }

    @Test
    void coordinatesAreMillimetres() throws Exception {
        ParsedSvg parsed = ParsedSvg.of(sample.getBytes(StandardCharsets.UTF_8));
        assertEquals("0 0 120 160", parsed.root().getAttribute("viewBox"));
        assertEquals("120mm", parsed.root().getAttribute("width"));
    }

    @Test
    void everyReferenceHasItsDefinitionAndNoOtherIsMade() throws Exception {
        List<String> ids = ParsedSvg.of(sample.getBytes(StandardCharsets.UTF_8)).all().stream()
                .map(e -> e.getAttribute("id")).filter(id -> !id.isEmpty()).sorted().toList();
        List<String> references = sample.lines().filter(line -> line.contains("url(#"))
                .map(line -> line.replaceAll(".*url\\(#(.*?)\\).*", "$1")).distinct().sorted().toList();
        assertEquals(ids, references);
        assertFalse(references.isEmpty());
    }

    @Test
    void holdsNoScriptAndNothingFromOutside() throws Exception {
        ParsedSvg parsed = ParsedSvg.of(sample.getBytes(StandardCharsets.UTF_8));
        assertTrue(parsed.all("script").isEmpty());
        assertTrue(parsed.all().stream().noneMatch(e -> e.hasAttribute("href") || e.hasAttribute("style")));
    }

    @Test
    void writesOneElementToALine() throws Exception {
        assertEquals(
                """
                        <?xml version="1.0" encoding="UTF-8"?>
                        <svg xmlns="http://www.w3.org/2000/svg" version="1.1" width="40mm" height="20.5mm" viewBox="0 0 40 20.5"\
                         font-family="'DejaVu Sans', 'Bitstream Vera Sans', Verdana, Arial, sans-serif">
                          <title>Two shapes</title>
                          <g data-id="a" transform="translate(1 2)">
                            <title>tip &amp; hub</title>
                            <rect x="0" y="0" width="10" height="0.3333" fill="#f1f3f5" stroke="#1a1a1a" stroke-width="0.25"/>
                          </g>
                          <circle cx="5" cy="6" r="2" fill="none" stroke="#1a1a1a" stroke-width="0.25"/>
                        </svg>
                        """,
                text(p -> p
                        .group(Frame.at(1, 2).withId("a").withTooltip("tip & hub"),
                                g -> g.fill(Ink.BAND).rect(0, 0, 10, 1 / 3.0))
                        .circle(5, 6, 2)));
    }

    @Test
    void strokeTellsDashAndRoundEnds() throws Exception {
        Element line = only("line", p -> p.pen(Stroke.of(Ink.RULE, 0.5).dashed(Dash.of(1.5, 0.5)).rounded())
                .line(1, 2, 3, 4));
        assertEquals("1.5 0.5", line.getAttribute("stroke-dasharray"));
        assertEquals("round", line.getAttribute("stroke-linecap"));
        assertEquals("round", line.getAttribute("stroke-linejoin"));
    }

    @Test
    void pathKeepsItsSteps() throws Exception {
        Element path = only("path", p -> p.path(Outline.from(1, 2).lineTo(3, 4).curveTo(5, 6, 7, 8, 9, 10).close()));
        assertEquals("M1 2 L3 4 C5 6 7 8 9 10 Z", path.getAttribute("d"));
        assertEquals("evenodd", path.getAttribute("fill-rule"));
    }

    @Test
    void hatchOnAGroundIsAShapeOverAShape() throws Exception {
        ParsedSvg parsed = parsed(p -> p
                .fill(Fill.of(Ink.BAND, Hatch.of(Hatch.Pattern.RISING, Ink.TEXT))).circle(5, 5, 3));
        List<Element> circles = parsed.all("circle");
        assertEquals(List.of("#f1f3f5", "url(#hatch1)"), circles.stream().map(c -> c.getAttribute("fill")).toList());
        assertEquals(List.of("", "#1a1a1a"), circles.stream().map(c -> c.getAttribute("stroke")).toList());
        Element pattern = parsed.all("pattern").get(0);
        assertEquals("rotate(-45)", pattern.getAttribute("patternTransform"));
        assertEquals("1.2", pattern.getAttribute("width"));
        assertEquals("0.6", parsed.all("line").get(0).getAttribute("y1"));
    }

    @Test
    void sameHatchIsDefinedOnce() throws Exception {
        Fill fill = Fill.of(Hatch.of(Hatch.Pattern.DOTS, Ink.TEXT));
        String text = text(p -> p.fill(fill).rect(0, 0, 5, 5).group(Frame.named("a"), g -> g.rect(5, 0, 5, 5)));
        assertEquals(2, text.split("<pattern", -1).length);
    }

    @Test
    void clipIsInTheCoordinatesOfItsGroup() throws Exception {
        String text = text(p -> p.group(Frame.at(5, 6).clippedTo(new Box(1, 1, 2, 3)), g -> g.circle(0, 0, 9)));
        assertTrue(text.contains("<g transform=\"translate(5 6)\" clip-path=\"url(#clip1)\">"), text);
        assertTrue(text.contains("<rect x=\"1\" y=\"1\" width=\"2\" height=\"3\"/>"), text);
    }

    @Test
    void textKeepsAnchorTurnAndTheRoomItWasLaidOutWith() throws Exception {
        TextStyle style = TextStyle.ofPt(9).bold().condensed();
        Element text = only("text", p -> p.lettering(style).text(7, 8, "6 Fr", Text.Anchor.MIDDLE, -90));
        assertEquals("middle", text.getAttribute("text-anchor"));
        assertEquals("rotate(-90 7 8)", text.getAttribute("transform"));
        assertEquals("3.175", text.getAttribute("font-size"));
        assertEquals("bold", text.getAttribute("font-weight"));
        assertEquals("condensed", text.getAttribute("font-stretch"));
        double width = TextMeasure.standard().widthMm("6 Fr", style);
        assertEquals(width, Double.parseDouble(text.getAttribute("textLength")), 0.0001);
    }

    @ParameterizedTest
    @ValueSource(strings = { " 6 Fr", "6 Fr ", "6  Fr" })
    void keepsBlanks(String string) throws Exception {
        Element text = only("text", p -> p.text(1, 1, string));
        assertEquals("preserve", text.getAttribute("xml:space"));
        assertEquals(string, text.getTextContent());
    }

    @Test
    void keepsCharactersBeyondTheBasicPlane() throws Exception {
        Element text = only("text", p -> p.text(1, 1, "x \uD835\uDC65 <&>\"'"));
        assertEquals("x \uD835\uDC65 <&>\"'", text.getTextContent());
    }

    @Test
    void numbersAreShortAndNeverMinusZeroOrWithAnExponent() {
        assertEquals("0", Numbers.mm(-0.00001));
        assertEquals("0.0001", Numbers.mm(0.0001));
        assertEquals("12000000", Numbers.mm(1.2e7));
        assertEquals("-1.5", Numbers.mm(-1.5));
    }

    private static Element only(String name, Consumer<PictureBuilder> content) throws Exception {
        List<Element> found = parsed(content).all(name);
        assertEquals(1, found.size());
        return found.get(0);
    }

    private static ParsedSvg parsed(Consumer<PictureBuilder> content) throws Exception {
        return ParsedSvg.of(text(content).getBytes(StandardCharsets.UTF_8));
    }

    private static String text(Consumer<PictureBuilder> content) throws IOException {
        PictureBuilder builder = new PictureBuilder();
        content.accept(builder);
        return text(builder.picture(40, 20.5, "Two shapes"));
    }

    private static String text(Picture picture) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        new SvgWriter().write(picture, out);
        return out.toString(StandardCharsets.UTF_8);
    }
}
