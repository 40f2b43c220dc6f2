/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.ferrule.picture.Box;
import org.ferrule.picture.Element;
import org.ferrule.picture.Group;
import org.ferrule.picture.Line;
import org.ferrule.picture.Picture;
import org.ferrule.picture.Point;
import org.ferrule.picture.Shape;
import org.ferrule.picture.Text;
import org.ferrule.picture.TextMeasure;
import org.ferrule.picture.Transform;

/** Reads pictures back: which words stand where, and in which group. */
public final class Drawn {
    private final List<Words> words = new ArrayList<>();
    private final List<Named> groups = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();

    /**
     * A line of text as it stands on the paper.
     *
     * @param text the line
     * @param box the room from capitals to baseline
     * @param sizePt its size on paper
     * @param group the innermost name around it, or empty
     */
    public record Words(String text, Box box, double sizePt, String group) {
    }

    /**
     * A line or a shape as it lies on the paper.
     *
     * @param box the room that it takes, without the width of its outline
     * @param element as it was drawn
     * @param group the innermost name around it, or empty
     */
    public record Mark(Box box, Element element, String group) {
    }

    /** A named group and its elements. */
    public record Named(String id, Group group) {
    }

    private Drawn(Picture picture) {
        read(picture.elements(), Transform.IDENTITY, "");
    }

    public static Drawn of(Picture picture) {
        return new Drawn(picture);
    }

    private void read(List<Element> elements, Transform transform, String name) {
        for (Element element : elements) {
            if (element instanceof Text text) {
                double sizePt = text.style().sizePt() * transform.scale();
                words.add(new Words(text.string(), box(text, transform), sizePt, name));
            } else if (element instanceof Line line) {
                marks.add(new Mark(box(Box.between(line.from(), line.to()), transform), line, name));
            } else if (element instanceof Shape shape) {
                marks.add(new Mark(box(shape.bounds(), transform), shape, name));
            } else if (element instanceof Group group) {
                Optional<String> id = group.frame().id();
                id.ifPresent(i -> groups.add(new Named(i, group)));
                read(group.elements(), group.frame().transform().then(transform), id.orElse(name));
            }
        }
    }

    private static Box box(Box inside, Transform transform) {
        return inside.corners().stream().map(transform::apply).map(corner -> Box.between(corner, corner))
                .reduce(Box::union).orElseThrow();
    }

    private static Box box(Text text, Transform transform) {
        TextMeasure measure = TextMeasure.standard();
        double width = measure.widthMm(text.string(), text.style());
        double left = switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> -width / 2;
            case END -> -width;
        };
        Transform turned = Transform.rotation(text.rotationDegrees()).then(Transform.translation(text.at().xMm(),
                text.at().yMm())).then(transform);
        return Box.between(turned.apply(new Point(left, -measure.capHeightMm(text.style()))),
                turned.apply(new Point(left + width, 0)));
    }

    public List<Words> words() {
        return words;
    }

    /** The one line that reads so. */
    public Words words(String text) {
        List<Words> found = words.stream().filter(w -> w.text().equals(text)).toList();
        if (found.size() != 1) {
            throw new AssertionError(found.size() + " lines \"" + text + "\" among " + text());
        }
        return found.get(0);
    }

    /** Lines and shapes in the order of painting. */
    public List<Mark> marks() {
        return marks;
    }

    /** Lines and shapes in groups of that name. */
    public List<Mark> marks(String group) {
        return marks.stream().filter(m -> m.group().equals(group)).toList();
    }

    /** All lines in the order of painting. */
    public String text() {
        return words.stream().map(Words::text).collect(Collectors.joining(" "));
    }

    /** The lines in groups of that name. */
    public String text(String group) {
        return words.stream().filter(w -> w.group().equals(group)).map(Words::text).collect(Collectors.joining(" "));
    }

    public boolean hasGroup(String id) {
        return groups.stream().anyMatch(g -> g.id().equals(id));
    }

    public List<Named> groups() {
        return groups;
    }

    /** Hands over all pairs of lines that overlap by more than a hair. */
    public List<String> overlaps() {
        List<String> overlaps = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            for (int j = i + 1; j < words.size(); j++) {
                if (overlap(words.get(i).box(), words.get(j).box())) {
                    overlaps.add("\"" + words.get(i).text() + "\" and \"" + words.get(j).text() + "\"");
                }
            }
        }
        return overlaps;
    }

    private static boolean overlap(Box a, Box b) {
        double hair = 0.05;
        return a.xMm() + hair < b.rightMm() && b.xMm() + hair < a.rightMm() && a.yMm() + hair < b.bottomMm()
                && b.yMm() + hair < a.bottomMm();
    }

    /** The lines that are not wholly within a box. */
    public List<String> outside(Box box) {
        return words.stream().filter(w -> w.box().xMm() < box.xMm() - 0.01 || w.box().yMm() < box.yMm() - 0.01
                || w.box().rightMm() > box.rightMm() + 0.01 || w.box().bottomMm() > box.bottomMm() + 0.01)
                .map(Words::text).toList();
    }

    /** Lets somebody look at every line. */
    public void forEachLine(Consumer<Words> user) {
        words.forEach(user);
    }
}
