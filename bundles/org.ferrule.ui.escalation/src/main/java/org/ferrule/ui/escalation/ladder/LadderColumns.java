/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import org.eclipse.swt.widgets.Display;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.engine.limits.CaseLimit;
import org.ferrule.escalation.plan.BailOut;
import org.ferrule.escalation.plan.LeftOut;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.escalation.plan.StopStatus;
import org.ferrule.escalation.plan.WireCheck;
import org.ferrule.escalation.technique.Technique;
import org.ferrule.plansheet.words.BailOutMark;
import org.ferrule.ui.escalation.ladder.SheetWriter.Line;
import org.ferrule.ui.escalation.live.PlannedCase;

/** Writes a plan: its steps, and beside or below them what must be at hand, when to stop, and what is left out. */
final class LadderColumns {

    private static final String AWAITED = "How far its figures may move is being worked out...";
    private static final String NOT_PROVED = "How far its figures may move is not worked out, because no search has "
            + "proved this order the best. The command line does so with --sensitivity.";

    private static final int BESIDE_FROM_LINES = 56;
    private static final double MARGIN = 0.6;
    private static final double STEPS_SHARE = 0.62;

    private final Display display;
    private final LadderFonts fonts;
    private final PlannedCase planned;
    private final int selected;
    private final Folds folds;

    LadderColumns(Display display, LadderFonts fonts, PlannedCase planned, int selected, Folds folds) {
        this.display = display;
        this.fonts = fonts;
        this.planned = planned;
        this.selected = selected;
        this.folds = folds;
    }

    Sheet write(int width) {
        int margin = fonts.space(MARGIN);
        boolean beside = width >= fonts.space(BESIDE_FROM_LINES);
        int room = width - 2 * margin;
        int stepsWidth = beside ? (int) (room * STEPS_SHARE) : room;
        SheetWriter steps = new SheetWriter(display, fonts, margin, margin, stepsWidth);
        steps(steps);
        SheetWriter rest = beside
                ? new SheetWriter(display, fonts, 2 * margin + stepsWidth, margin, room - stepsWidth - margin)
                : new SheetWriter(display, fonts, margin, steps.bottom(), room);
        rest(rest);
        return SheetWriter.sheet(margin, steps, rest);
    }

    private void steps(SheetWriter writer) {
        Plan plan = planned.plan();
        if (plan.wireCheck() == WireCheck.DENIED) {
            warning(writer, "Nothing is planned: the wire does not lie where it has to.");
        } else if (plan.progress().crossed()) {
            notice(writer, "The device is across. Nothing more is planned.", LadderInk.CARD, LadderInk.NEXT);
        } else if (plan.rungs().isEmpty()) {
            warning(writer, "Nothing on the ladder can be done, or is worth more than stopping.");
        }
        plan.looks().forEach(look -> look(writer, look));
        RungCard card = new RungCard(writer, planned, selected, folds);
        plan.rungs().forEach((Rung rung) -> card.write(rung));
        plan.exits().forEach(exit -> exit(writer, exit));
    }

    private void warning(SheetWriter writer, String words) {
        notice(writer, words, LadderInk.WARN_GROUND, LadderInk.WARN);
    }

    private void notice(SheetWriter writer, String words, LadderInk ground, LadderInk edge) {
        int top = writer.bottom();
        int begun = writer.begin();
        writer.text(fonts.strong(), LadderInk.TEXT, fonts.space(0.7), words);
        writer.end(begun, top, ground, edge, edge);
        writer.skip(0.4);
    }

    private void look(SheetWriter writer, Technique look) {
        writer.text(fonts.text(), LadderInk.TEXT, fonts.space(0.7), "Look first: " + look.name());
        look.advice().cautions()
                .forEach(words -> writer.text(fonts.small(), LadderInk.MUTED, fonts.space(0.7), words));
        writer.skip(0.4);
    }

    private void exit(SheetWriter writer, Technique exit) {
        int top = writer.bottom();
        int begun = writer.begin();
        int indent = fonts.space(0.7);
        writer.text(fonts.strong(), LadderInk.TEXT, indent, "Or end here: " + exit.name());
        exit.advice().changes().forEach(words -> writer.text(fonts.small(), LadderInk.MUTED, indent, words));
        exit.advice().cautions().forEach(words -> writer.text(fonts.small(), LadderInk.MUTED, indent, words));
        writer.end(begun, top, LadderInk.GROUND, LadderInk.EDGE, null);
        writer.skip(0.4);
    }

    private void rest(SheetWriter writer) {
        section(writer, "At hand, should it go wrong", planned.plan().bailOut().stream().map(this::atHand).toList());
        limits(writer);
        section(writer, "When to stop", planned.plan().stops().stream().map(this::stop).toList());
        order(writer);
        section(writer, "Not on the ladder", planned.plan().leftOut().stream().flatMap(l -> leftOut(l).stream())
                .toList());
        section(writer, "The log does not agree with the shelf or the techniques", planned.plan().progress()
                .problems().stream().map(p -> warned(planned.words().status().problem(p))).toList());
    }

    /** Why the steps stand in this order, and on what that rests. */
    private void order(SheetWriter writer) {
        if (planned.plan().rungs().isEmpty()) {
            return;
        }
        List<String> why = planned.reasons().map(reasons -> planned.words().why().order(reasons, planned.plan()))
                .orElse(List.of(missing(planned)));
        folding(writer, Folds.ORDER, "Why this order", 'O', List.of(),
                Stream.concat(why.stream(), planned.words().assumptions().all(planned.plan()).stream())
                        .map(this::small).toList());
    }

    /** Returns what stands there as long as, or because, nobody has worked out what the order hangs on. */
    static String missing(PlannedCase planned) {
        return planned.plan().order().isExact() ? AWAITED : NOT_PROVED;
    }

    private Line small(String words) {
        return Line.of(fonts.small(), LadderInk.TEXT, words);
    }

    /** What is reached by now stands there also when the rest is folded. */
    private void limits(SheetWriter writer) {
        List<CaseLimit> limits = planned.limits();
        folding(writer, Folds.LIMITS, "Limits and scores", 'L',
                Stream.concat(limits.stream().filter(CaseLimit::reached).map(limit -> warned(limit.line())),
                        planned.limitsInBrief().stream().map(this::small)).toList(),
                limits.stream().map(limit -> limit.reached() ? warned(limit.line()) : small(limit.line())).toList());
    }

    /** A part with a heading that folds it. */
    private void folding(SheetWriter writer, String part, String heading, char key, List<Line> folded,
            List<Line> unfolded) {
        int top = writer.bottom();
        int begun = writer.begin();
        int indent = fonts.space(0.7);
        boolean open = folds.isOpen(part);
        writer.fold(part, open, indent, heading, key);
        for (Line line : open ? unfolded : folded) {
            line.write(writer, indent, writer.width() - 2 * indent);
            writer.skip(0.25);
        }
        writer.end(begun, top, LadderInk.CARD, LadderInk.EDGE, null);
        writer.skip(0.4);
    }

    private void section(SheetWriter writer, String title, List<Line> lines) {
        if (lines.isEmpty()) {
            return;
        }
        int top = writer.bottom();
        int begun = writer.begin();
        int indent = fonts.space(0.7);
        writer.text(fonts.small(), LadderInk.MUTED, indent, title);
        writer.skip(0.2);
        for (Line line : lines) {
            line.write(writer, indent, writer.width() - 2 * indent);
            writer.skip(0.25);
        }
        writer.end(begun, top, LadderInk.CARD, LadderInk.EDGE, null);
        writer.skip(0.4);
    }

    private Line warned(String words) {
        return Line.of(fonts.text(), LadderInk.WARN, "\u25b2 " + words);
    }

    private Line atHand(BailOut bailOut) {
        BailOutMark mark = BailOutMark.of(bailOut);
        String words = mark.word() + ": " + planned.words().status().bailOut(bailOut);
        return mark == BailOutMark.READY ? Line.of(VerdictLook.FITS, fonts.text(), LadderInk.TEXT, words)
                : Line.of(mark == BailOutMark.NOT_KNOWN ? VerdictLook.UNKNOWN : VerdictLook.BLOCKED, fonts.strong(),
                        LadderInk.WARN, words);
    }

    private Line stop(StopStatus status) {
        String words = planned.words().status().stop(status) + " \u2013 " + planned.words().status().standing(status);
        return status.reached() ? warned(words) : Line.of(fonts.text(), LadderInk.TEXT, words);
    }

    private List<Line> leftOut(LeftOut leftOut) {
        List<Line> lines = new ArrayList<>();
        lines.add(Line.of(fonts.strong(), LadderInk.TEXT, planned.words().leftOut().name(leftOut)));
        lines.add(Line.of(fonts.small(), LadderInk.MUTED, planned.words().leftOut().why(leftOut)));
        planned.words().leftOut().remedies(leftOut).stream().limit(1)
                .forEach(remedy -> lines.add(Line.of(fonts.small(), LadderInk.NEXT, "\u2192 " + remedy)));
        return lines;
    }
}
