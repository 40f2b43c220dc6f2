/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.tests.robot;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

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

/** Reads a picture back: its words, its groups, and the room that everything takes on the paper. */
public final class DrawnPicture {

    private final Picture picture;
    private final List<Text> texts = new ArrayList<>();
    private final List<String> groups = new ArrayList<>();
    private final List<Placed> placed = new ArrayList<>();

    /** Something of the picture, in words, with its room on the paper. */
    private record Placed(String what, Box box) {
    }

    private DrawnPicture(Picture picture) {
        this.picture = picture;
        read(picture.elements(), Transform.IDENTITY, Optional.empty());
    }

    /** Reads a picture. */
    public static DrawnPicture of(Picture picture) {
        return new DrawnPicture(picture);
    }

    private void read(List<Element> elements, Transform transform, Optional<Box> clip) {
        for (Element element : elements) {
            if (element instanceof Group group) {
                group.frame().id().ifPresent(groups::add);
                Transform inner = group.frame().transform().then(transform);
                read(group.elements(), inner,
                        group.frame().clip().map(box -> on(box.corners().stream(), inner)).or(() -> clip));
            } else if (element instanceof Text text) {
                texts.add(text);
                place("\"" + text.string() + "\"", room(text, transform), clip);
            } else if (element instanceof Line line) {
                place("a line", on(Stream.of(line.from(), line.to()), transform), clip);
            } else {
                place("a shape", on(((Shape) element).bounds().corners().stream(), transform), clip);
            }
        }
    }

    /** What is cut off takes no more room than what cuts it. */
    private void place(String what, Box box, Optional<Box> clip) {
        placed.add(new Placed(what, clip.orElse(box)));
    }

    private static Box on(Stream<Point> corners, Transform transform) {
        return corners.map(transform::apply).map(corner -> Box.between(corner, corner)).reduce(Box::union)
                .orElseThrow();
    }

    private static Box room(Text text, Transform transform) {
        TextMeasure measure = TextMeasure.standard();
        double width = measure.widthMm(text.string(), text.style());
        double left = switch (text.anchor()) {
            case START -> 0;
            case MIDDLE -> -width / 2;
            case END -> -width;
        };
        Transform turned = Transform.rotation(text.rotationDegrees())
                .then(Transform.translation(text.at().xMm(), text.at().yMm())).then(transform);
        return on(Stream.of(new Point(left, -measure.capHeightMm(text.style())), new Point(left + width, 0)), turned);
    }

    /** Returns what lies outside the paper by more than a margin, each in words. */
    public List<String> outside(double marginMm) {
        Box paper = picture.paper().inset(-marginMm);
        return placed.stream().filter(one -> !one.box().corners().stream().allMatch(paper::contains))
                .map(one -> one.what() + " at " + one.box()).toList();
    }

    /** Returns all words, in the order of painting. */
    public String words() {
        return texts.stream().map(Text::string).collect(Collectors.joining(" "));
    }

    /** Returns the size of the smallest letters, in points. */
    public double smallestPt() {
        return texts.stream().mapToDouble(text -> text.style().sizePt()).min().orElse(Double.MAX_VALUE);
    }

    /** Tells whether something was drawn by a name. */
    public boolean hasGroup(String id) {
        return groups.contains(id);
    }
}
