/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.ladder;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.swt.graphics.Rectangle;
import org.ferrule.chart.look.Scheme;
import org.ferrule.chart.look.VerdictLook;
import org.ferrule.escalation.equipment.Candidate;
import org.ferrule.escalation.equipment.RoleAnswer;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.escalation.technique.Resource;
import org.ferrule.fit.verdict.Authority;
import org.ferrule.picture.Picture;
import org.ferrule.plansheet.drawing.SystemDrawing;
import org.ferrule.shelf.stock.Pick;
import org.ferrule.ui.escalation.ladder.SheetWriter.Line;
import org.ferrule.ui.escalation.live.PlannedCase;
import org.ferrule.ui.look.Colours;

/** Writes one step: what it is, what to take, what it changes, what to mind, when to give it up. */
final class RungCard {

    private static final double LABEL = 5.4;
    private static final double BADGE = 1.6;
    private static final double PIXELS_PER_MM_AND_LINE = 0.21;
    private static final double LEAST_MM = 60;
    private static final double LETTERING = 1.4;

    private final SheetWriter writer;
    private final PlannedCase planned;
    private final int selected;
    private final Folds folds;

    /**
     * Writes into a column.
     *
     * @param selected number of the step that is selected
     * @param folds which reasons are unfolded
     */
    RungCard(SheetWriter writer, PlannedCase planned, int selected, Folds folds) {
        this.writer = writer;
        this.planned = planned;
        this.selected = selected;
        this.folds = folds;
    }

    void write(Rung rung) {
        boolean next = rung.number() == 1;
        LadderFonts fonts = writer.fonts();
        int top = writer.bottom();
        int begun = writer.begin();
        int badge = fonts.space(BADGE);
        int indent = fonts.space(0.7);
        writer.add(new BadgePiece(new Rectangle(writer.left() + indent, writer.bottom(), badge, badge), fonts.strong(),
                rung.number(), rung.isSetup(), next));
        int words = indent + badge + fonts.space(0.6);
        writer.text(fonts.name(), LadderInk.TEXT, words, planned.words().rungs().title(rung));
        writer.text(fonts.small(), LadderInk.MUTED, words, kind(rung));
        writer.skip(0.3);
        lines(rung, words);
        Rectangle bounds = writer.end(begun, top, LadderInk.CARD,
                rung.number() == selected ? LadderInk.NEXT : LadderInk.EDGE, next ? LadderInk.NEXT : null);
        writer.step(rung.number(), bounds);
        writer.skip(0.4);
    }

    private String kind(Rung rung) {
        String costs = planned.words().budgets().amounts().all(rung.costs());
        return Stream.of(planned.words().rungs().kind(rung), costs).filter(w -> !w.isEmpty())
                .collect(Collectors.joining("  \u00b7  "));
    }

    private void lines(Rung rung, int indent) {
        LadderFonts fonts = writer.fonts();
        int label = fonts.space(LABEL);
        int right = fonts.space(0.6);
        writer.labelled(indent, label, right, "Mark", plain(planned.words().rungs().marks(rung), true));
        writer.labelled(indent, label, right, "Take", equipment(rung));
        writer.labelled(indent, label, right, "Changes", plain(Stream.concat(
                planned.words().rungs().changes(rung).stream(), rung.move().advice().changes().stream()).toList(),
                false));
        if (rung.isSetup()) {
            writer.labelled(indent, label, right, "", List.of(drawing(rung)));
        }
        writer.labelled(indent, label, right, "Mind", plain(rung.move().advice().cautions(), false));
        writer.labelled(indent, label, right, "Give up when", stop(rung));
        writer.labelled(indent, label, right, "After it", delivery(rung));
        writer.labelled(indent, label, right, "Used by then", List.of(used(rung)));
        boolean open = folds.isOpen(Folds.of(rung));
        writer.fold(Folds.of(rung), open, indent, "Why here", 'W');
        if (open) {
            writer.labelled(indent, label, right, "", why(rung));
        }
    }

    private List<Line> plain(List<String> lines, boolean warn) {
        return lines.stream().map(words -> warn ? Line.of(writer.fonts().strong(), LadderInk.WARN, "\u25b2 " + words)
                : Line.of(writer.fonts().text(), LadderInk.TEXT, words)).toList();
    }

    private List<Line> stop(Rung rung) {
        String stop = rung.move().advice().stop();
        return stop.isEmpty() ? List.of() : List.of(Line.of(writer.fonts().strong(), LadderInk.TEXT, stop));
    }

    private List<Line> equipment(Rung rung) {
        List<Line> lines = new ArrayList<>();
        for (RoleAnswer role : rung.equipment().roles()) {
            role.chosen().ifPresent(candidate -> {
                lines.add(Line.of(planned.words().fits().look(candidate.suitability()), writer.fonts().strong(),
                        LadderInk.TEXT, planned.words().equipment().chosen(role)));
                lines.add(Line.of(writer.fonts().small(), LadderInk.MUTED, where(rung, candidate)));
            });
        }
        return lines;
    }

    /** A later try goes on with the box that an earlier one has opened. */
    private String where(Rung rung, Candidate candidate) {
        List<Pick> picks = candidate.supply().picks();
        boolean open = rung.attempt() > 1 && candidate.device().isPresent() && !rung.taken().containsAll(picks);
        String fit = planned.words().fits().brief(candidate.suitability());
        String lots = open ? "the one that is open"
                : picks.stream().map(pick -> lot(pick)).collect(Collectors.joining("; "));
        return Stream.of(fit, lots).filter(w -> !w.isEmpty()).collect(Collectors.joining("  \u00b7  "));
    }

    private String lot(Pick pick) {
        String words = String.join(", ", planned.words().equipment().lot(pick.lot()));
        return pick.count() == 1 ? words : pick.count() + " of " + words;
    }

    /** The system before and after, as large as the lettering of the ladder. */
    private Line drawing(Rung rung) {
        return (sheet, indent, room) -> {
            double pixelsPerMm = sheet.fonts().space(1) * PIXELS_PER_MM_AND_LINE;
            Scheme scheme = Colours.dark() ? Scheme.DARK : Scheme.LIGHT;
            double width = Math.max(LEAST_MM, room / pixelsPerMm);
            sheet.picture(drawing(rung, scheme, width), () -> drawing(rung, Scheme.LIGHT, width), indent,
                    pixelsPerMm);
        };
    }

    private Picture drawing(Rung rung, Scheme scheme, double width) {
        return SystemDrawing.change(rung.equipment().before(), rung.equipment().after(), planned.words(), scheme,
                width, LETTERING);
    }

    private List<Line> delivery(Rung rung) {
        return rung.delivery().map(verdict -> List.of(Line.of(VerdictLook.of(verdict, Authority.GEOMETRY),
                writer.fonts().text(), LadderInk.TEXT, planned.words().rungs().delivery(rung)))).orElse(List.of());
    }

    private Line used(Rung rung) {
        boolean beyond = !rung.beyond().isEmpty();
        String sums = Stream.of(Resource.values()).filter(r -> rung.worst().of(r) > 0).map(r -> sum(rung, r))
                .collect(Collectors.joining(", "));
        return Line.of(beyond ? writer.fonts().strong() : writer.fonts().small(),
                beyond ? LadderInk.WARN : LadderInk.MUTED, sums.isEmpty() ? "nothing" : "at worst " + sums);
    }

    private String sum(Rung rung, Resource resource) {
        String words = planned.words().budgets().amounts().used(resource, rung.worst().of(resource));
        return rung.beyond().contains(resource) ? words + " \u2013 beyond the budget" : words;
    }

    private List<Line> why(Rung rung) {
        String moves = planned.reasons().map(reasons -> planned.words().why().step(rung, reasons, planned.plan()))
                .orElse(LadderColumns.missing(planned));
        return Stream.of(planned.words().rungs().why(rung, planned.plan()), planned.words().rungs().chance(rung), moves)
                .filter(words -> !words.isEmpty())
                .map(words -> Line.of(writer.fonts().small(), LadderInk.MUTED, words)).toList();
    }
}
