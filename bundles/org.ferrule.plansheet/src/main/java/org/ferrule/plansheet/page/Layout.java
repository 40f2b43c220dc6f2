/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.ferrule.chart.page.Footer;
import org.ferrule.chart.page.PageStyle;
import org.ferrule.chart.words.Phrases;
import org.ferrule.chart.words.Printable;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.technique.Advice;
import org.ferrule.escalation.technique.Move;
import org.ferrule.escalation.technique.StopRule;
import org.ferrule.fit.device.SourceRef;
import org.ferrule.picture.Picture;
import org.ferrule.picture.PictureBuilder;

/** A sheet laid out with some detail at some size: whether it fits on the paper shows in its height. */
final class Layout {
    private static final double GAP_MM = 3;

    private final SheetContent content;
    private final Phrases phrases;
    private final double marginMm;
    private final double widthMm;
    private final double roomMm;
    private final SheetHead head;
    private final Situation situation;
    private final RungTable table;
    private final Column instead;
    private final Closing closing;
    private final Footer footer;

    Layout(SheetContent content, Detail detail, double scale) {
        PageStyle style = new PageStyle(scale);
        Plan plan = content.plan();
        this.content = content;
        this.phrases = content.words().phrases();
        this.marginMm = style.margin();
        this.widthMm = content.paper().widthMm() - 2 * marginMm;
        this.roomMm = content.paper().heightMm() - 2 * marginMm;
        this.head = new SheetHead(content, style, widthMm, detail);
        this.situation = new Situation(plan, content.words(), detail, style, widthMm);
        this.table = new RungTable(plan, content.words(), detail, style, widthMm);
        this.instead = new Column(style, widthMm, detail.lines());
        if (plan.rungs().isEmpty()) {
            instead.strong(content.words().status().noSteps(plan));
        }
        this.closing = new Closing(content, detail, style, widthMm);
        this.footer = new Footer(style, foot(plan, detail), widthMm);
    }

    private List<String> foot(Plan plan, Detail detail) {
        List<String> texts = new ArrayList<>(List.of(phrases.get("sheet.caution")));
        Set<String> sources = sources(plan);
        if (!sources.isEmpty()) {
            texts.add(phrases.fill("sheet.sources", String.join("; ", sources)));
        }
        Shortened.of(detail, content).ifPresent(texts::add);
        return texts;
    }

    private static Set<String> sources(Plan plan) {
        Stream<Advice> advice = plan.rungs().stream().map(rung -> rung.move()).map(Move::advice);
        return Stream.concat(advice.map(Advice::source), plan.ladder().stopRules().stream().map(StopRule::source))
                .filter(source -> !source.isNone()).map(SourceRef::toString).map(Printable::line)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    boolean fits() {
        return heightMm() <= roomMm;
    }

    private double heightMm() {
        return head.heightMm() + situation.heightMm() + GAP_MM + tableMm() + GAP_MM + closing.heightMm() + GAP_MM
                + footer.heightMm();
    }

    private double tableMm() {
        return instead.isEmpty() ? table.heightMm() : instead.heightMm();
    }

    Picture picture() {
        PictureBuilder g = new PictureBuilder();
        double y = marginMm;
        head.draw(g, marginMm, y);
        y += head.heightMm();
        situation.draw(g, marginMm, y);
        y += situation.heightMm() + GAP_MM;
        if (instead.isEmpty()) {
            table.draw(g, marginMm, y);
        } else {
            instead.draw(g, marginMm, y);
        }
        y += tableMm() + GAP_MM;
        closing.draw(g, marginMm, y);
        footer.draw(g, marginMm, marginMm + roomMm - footer.heightMm());
        String title = Printable.line(content.imprint().title());
        return g.picture(content.paper().widthMm(), content.paper().heightMm(), title).described(inWords());
    }

    /** The page for those who cannot see it: the steps. */
    private String inWords() {
        return content.plan().rungs().stream().map(content.words().rungs()::heading)
                .collect(Collectors.joining("\n"));
    }
}
