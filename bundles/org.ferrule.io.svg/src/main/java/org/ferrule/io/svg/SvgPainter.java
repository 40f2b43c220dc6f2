/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.svg;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ferrule.picture.Element;
import org.ferrule.picture.Ellipse;
import org.ferrule.picture.Fill;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Group;
import org.ferrule.picture.Line;
import org.ferrule.picture.Painter;
import org.ferrule.picture.Path;
import org.ferrule.picture.Rect;
import org.ferrule.picture.Segment;
import org.ferrule.picture.Style;
import org.ferrule.picture.Text;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.Transform;

/** Paints elements as SVG elements. */
final class SvgPainter implements Painter<IOException> {

    private final XmlOutput xml;
    private final Definitions definitions;
    private final TextMeasure measure = TextMeasure.standard();

    SvgPainter(XmlOutput xml, Definitions definitions) {
        this.xml = xml;
        this.definitions = definitions;
    }

    void paint(List<Element> elements) throws IOException {
        for (Element element : elements) {
            element.paintOn(this);
        }
    }

    @Override
    public void line(Line line) throws IOException {
        xml.element("line", new Attributes().mm("x1", line.from().xMm()).mm("y1", line.from().yMm())
                .mm("x2", line.to().xMm()).mm("y2", line.to().yMm()).stroke(line.stroke()));
    }

    @Override
    public void path(Path path) throws IOException {
        String steps = path.segments().stream().map(SvgPainter::step).collect(Collectors.joining(" "));
        shape("path", new Attributes().add("d", steps).add("fill-rule", "evenodd"), path.style());
    }

    @Override
    public void rect(Rect rect) throws IOException {
        Attributes geometry = new Attributes().box(rect.box());
        if (rect.cornerRadiusMm() > 0) {
            geometry.mm("rx", rect.cornerRadiusMm());
        }
        shape("rect", geometry, rect.style());
    }

    @Override
    public void ellipse(Ellipse ellipse) throws IOException {
        Attributes geometry = new Attributes().mm("cx", ellipse.centre().xMm()).mm("cy", ellipse.centre().yMm());
        if (ellipse.radiusXMm() == ellipse.radiusYMm()) {
            shape("circle", geometry.mm("r", ellipse.radiusXMm()), ellipse.style());
        } else {
            geometry.mm("rx", ellipse.radiusXMm()).mm("ry", ellipse.radiusYMm());
            shape("ellipse", geometry, ellipse.style());
        }
    }

    @Override
    public void text(Text text) throws IOException {
        Attributes attributes = new Attributes().mm("x", text.at().xMm()).mm("y", text.at().yMm())
                .add("transform", turn(text)).add("text-anchor", anchor(text.anchor()));
        addFont(text, attributes);
        xml.textElement("text", attributes, text.string());
    }

    @Override
    public void group(Group group) throws IOException {
        Frame frame = group.frame();
        xml.begin("g", new Attributes()
                .add("data-id", frame.id())
                .add("transform", Optional.of(frame.transform()).filter(t -> !t.equals(Transform.IDENTITY))
                        .map(Numbers::transform))
                .add("clip-path", frame.clip().map(definitions::clip)));
        if (frame.tooltip().isPresent()) {
            xml.textElement("title", Attributes.NONE, frame.tooltip().get());
        }
        paint(group.elements());
        xml.end();
    }

    /** A hatch on a ground is a second shape: a ground inside the pattern would show the seams of its tiles. */
    private void shape(String name, Attributes geometry, Style style) throws IOException {
        Fill fill = style.fill();
        Attributes upper = geometry.copy();
        if (fill.hatch().isEmpty()) {
            upper.fill(fill.ground());
        } else {
            if (fill.ground().isPresent()) {
                xml.element(name, geometry.copy().fill(fill.ground()));
            }
            upper.add("fill", definitions.hatch(fill.hatch().get()));
        }
        style.stroke().ifPresent(upper::stroke);
        xml.element(name, upper);
    }

    private void addFont(Text text, Attributes attributes) {
        if (text.style().face().isCondensed()) {
            attributes.add("font-family", SvgFonts.families(text.style().face())).add("font-stretch", "condensed");
        }
        if (text.style().face().isBold()) {
            attributes.add("font-weight", "bold");
        }
        attributes.mm("font-size", text.style().sizeMm()).fill(Optional.of(text.style().ink()))
                .mm("textLength", measure.widthMm(text.string(), text.style())).add("lengthAdjust", "spacingAndGlyphs")
                .add("xml:space", blanksMatter(text.string()) ? Optional.of("preserve") : Optional.empty());
    }

    private static boolean blanksMatter(String text) {
        return text.startsWith(" ") || text.endsWith(" ") || text.contains("  ");
    }

    private static Optional<String> turn(Text text) {
        return text.rotationDegrees() == 0 ? Optional.empty()
                : Optional
                        .of("rotate(" + Numbers.degrees(text.rotationDegrees()) + " " + Numbers.point(text.at()) + ")");
    }

    private static Optional<String> anchor(Text.Anchor anchor) {
        return switch (anchor) {
            case START -> Optional.empty();
            case MIDDLE -> Optional.of("middle");
            case END -> Optional.of("end");
        };
    }

    private static String step(Segment segment) {
        String places = segment.points().stream().map(Numbers::point).collect(Collectors.joining(" "));
        if (segment instanceof Segment.MoveTo) {
            return "M" + places;
        }
        if (segment instanceof Segment.LineTo) {
            return "L" + places;
        }
        return segment instanceof Segment.CurveTo ? "C" + places : "Z";
    }
}
