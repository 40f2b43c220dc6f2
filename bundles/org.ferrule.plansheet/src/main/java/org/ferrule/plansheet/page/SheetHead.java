/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

import org.ferrule.chart.page.Edition;
import org.ferrule.chart.page.PageStyle;
import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.Printable;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.WireCheck;
import org.ferrule.picture.Box;
import org.ferrule.picture.Frame;
import org.ferrule.picture.Ink;
import org.ferrule.picture.PictureBuilder;
import org.ferrule.picture.Point;
import org.ferrule.picture.TextLayout;

/** Title, day and revision, and the box for the wire, which comes before everything. */
final class SheetHead {
    private static final double GAP_MM = 1.6;
    private static final int TITLE_LINES = 2;

    private final SheetContent content;
    private final Phrases phrases;
    private final PageStyle style;
    private final double widthMm;
    private final List<String> title;
    private final Column below;
    private final Column framed;

    SheetHead(SheetContent content, PageStyle style, double widthMm, Detail detail) {
        this.content = content;
        this.phrases = content.words().phrases();
        this.style = style;
        this.widthMm = widthMm;
        this.title = TextLayout.standard().wrap(Printable.line(content.imprint().title()), style.title(),
                widthMm - PageStyle.width(edition(), style.strong()) - 4, TITLE_LINES);
        this.below = new Column(style, widthMm, detail.lines());
        below.small(subtitle());
        below.muted(basis());
        this.framed = new Column(style, widthMm - indent() - GAP_MM, Integer.MAX_VALUE);
        content.closed().ifPresentOrElse(this::addClosed, this::addWireCheck);
    }

    /** A sheet of a closed case must not be taken for that of a case to come. */
    private void addClosed(String closed) {
        framed.strong(Printable.line(closed));
        framed.small(phrases.get("sheet.closed"));
    }

    private void addWireCheck() {
        framed.strong(phrases.fill("sheet.first", content.words().status().wireCheck()));
        framed.small(content.words().status().wireCheck(content.plan().wireCheck()));
    }

    private String edition() {
        String date = content.imprint().date().toString();
        return content.imprint().revision().isEmpty() ? date
                : phrases.fill("sheet.edition", Printable.line(content.imprint().revision()), date);
    }

    private String subtitle() {
        Plan plan = content.plan();
        List<String> parts = new ArrayList<>();
        parts.add(phrases.fill("sheet.ladder", edition(new Edition(plan.ladder().title(), plan.ladder().revision()))));
        parts.add(phrases.fill("sheet.day", plan.file().day().toString()));
        if (!content.imprint().author().isBlank()) {
            parts.add(phrases.fill("sheet.author", content.imprint().author()));
        }
        return String.join(phrases.get("sheet.dot"), parts);
    }

    private String basis() {
        List<String> parts = new ArrayList<>();
        parts.add(phrases.fill("sheet.rules", edition(content.basis().rules())));
        parts.add(phrases.fill("sheet.libraries", content.basis().libraries().stream().map(this::edition)
                .collect(Collectors.joining("; "))));
        parts.addAll(content.basis().conditions());
        return String.join(phrases.get("sheet.dot"), parts);
    }

    private String edition(Edition edition) {
        return edition.revision().isEmpty() ? edition.title()
                : phrases.fill("sheet.titled", edition.title(), edition.revision());
    }

    private double box() {
        return PageStyle.leading(style.strong()) * 1.2;
    }

    /** Before the words in the frame: room for the box to be ticked, where there is one. */
    private double indent() {
        return content.closed().isPresent() ? GAP_MM : box() + 2 * GAP_MM;
    }

    private double titleMm() {
        return title.size() * PageStyle.leading(style.title());
    }

    private double framedMm() {
        return framed.heightMm() + 2 * GAP_MM;
    }

    double heightMm() {
        return titleMm() + below.heightMm() + GAP_MM + framedMm() + 1.5 * GAP_MM;
    }

    void draw(PictureBuilder g, double xMm, double yMm) {
        double baseline = PageStyle.baseline(yMm, style.title());
        g.lettering(style.title()).lines(xMm, baseline, PageStyle.leading(style.title()), title);
        g.lettering(style.strong()).textEnd(xMm + widthMm, baseline, edition());
        below.draw(g, xMm, yMm + titleMm());
        double top = yMm + titleMm() + below.heightMm() + GAP_MM;
        g.group(Frame.named(content.closed().isPresent() ? "closed" : "wire"),
                inner -> framed(inner, new Box(xMm, top, widthMm, framedMm())));
    }

    private void framed(PictureBuilder g, Box room) {
        g.noFill().pen(Ink.TEXT, 0.6).rect(room);
        if (content.closed().isEmpty()) {
            tickBox(g, room);
        }
        framed.draw(g, room.xMm() + indent(), room.yMm() + GAP_MM);
    }

    private void tickBox(PictureBuilder g, Box room) {
        double middle = room.centre().yMm();
        double left = room.xMm() + GAP_MM;
        Box box = new Box(left, middle - box() / 2, box(), box());
        g.noFill().pen(Ink.TEXT, 0.35).rect(box);
        if (content.plan().wireCheck() == WireCheck.STATED) {
            g.pen(Ink.TEXT, 0.5).polyline(new Point(box.xMm() + box() * 0.2, middle),
                    new Point(box.xMm() + box() * 0.42, middle + box() * 0.25),
                    new Point(box.xMm() + box() * 0.82, middle - box() * 0.28));
        } else if (content.plan().wireCheck() == WireCheck.DENIED) {
            g.pen(Ink.TEXT, 0.5).line(box.xMm(), box.yMm(), box.rightMm(), box.bottomMm())
                    .line(box.rightMm(), box.yMm(), box.xMm(), box.bottomMm());
        }
    }
}
