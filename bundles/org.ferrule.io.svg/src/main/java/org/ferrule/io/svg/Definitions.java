/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.io.svg;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ferrule.picture.Box;
import org.ferrule.picture.Element;
import org.ferrule.picture.Group;
import org.ferrule.picture.Hatch;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Shape;

/** The hatches and clips that a picture uses, each once and named in the order of first use. */
final class Definitions {

    private final Map<Hatch, String> hatches = new LinkedHashMap<>();
    private final Map<Box, String> clips = new LinkedHashMap<>();

    private Definitions() {
    }

    static Definitions of(Picture picture) {
        Definitions definitions = new Definitions();
        definitions.collect(picture.elements());
        return definitions;
    }

    /** The attribute value that refers to a hatch. */
    String hatch(Hatch hatch) {
        return "url(#" + hatches.get(hatch) + ")";
    }

    /** The attribute value that refers to a clip. */
    String clip(Box box) {
        return "url(#" + clips.get(box) + ")";
    }

    void write(XmlOutput xml) throws IOException {
        if (hatches.isEmpty() && clips.isEmpty()) {
            return;
        }
        xml.begin("defs", Attributes.NONE);
        for (Map.Entry<Hatch, String> hatch : hatches.entrySet()) {
            writeHatch(hatch.getKey(), hatch.getValue(), xml);
        }
        for (Map.Entry<Box, String> clip : clips.entrySet()) {
            writeClip(clip.getKey(), clip.getValue(), xml);
        }
        xml.end();
    }

    private void writeHatch(Hatch hatch, String id, XmlOutput xml) throws IOException {
        xml.begin("pattern", new Attributes().add("id", id).add("patternUnits", "userSpaceOnUse")
                .mm("width", hatch.spacingMm()).mm("height", hatch.spacingMm())
                .add("patternTransform", turn(hatch.pattern().angleDegrees())));
        new SvgPainter(xml, this).paint(hatch.tile());
        xml.end();
    }

    private static Optional<String> turn(double degrees) {
        return degrees == 0 ? Optional.empty() : Optional.of("rotate(" + Numbers.degrees(degrees) + ")");
    }

    private static void writeClip(Box box, String id, XmlOutput xml) throws IOException {
        xml.begin("clipPath", new Attributes().add("id", id));
        xml.element("rect", new Attributes().box(box));
        xml.end();
    }

    private void collect(List<Element> elements) {
        for (Element element : elements) {
            if (element instanceof Group group) {
                group.frame().clip().ifPresent(box -> clips.computeIfAbsent(box, b -> "clip" + (clips.size() + 1)));
                collect(group.elements());
            } else if (element instanceof Shape shape) {
                shape.style().fill().hatch()
                        .ifPresent(hatch -> hatches.computeIfAbsent(hatch, h -> "hatch" + (hatches.size() + 1)));
            }
        }
    }
}
