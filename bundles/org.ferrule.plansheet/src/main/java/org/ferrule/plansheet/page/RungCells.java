/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.plansheet.page;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.ferrule.chart.page.PageStyle;
import org.ferrule.chart.words.Phrases;
import org.ferrule.escalation.equipment.RoleAnswer;
import org.ferrule.escalation.plan.Plan;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.plansheet.page.Detail.Omission;
import org.ferrule.plansheet.words.PlanWords;

/** What the cells of one step say. */
final class RungCells {
    private final Plan plan;
    private final PlanWords words;
    private final Phrases phrases;
    private final Detail detail;

    RungCells(Plan plan, PlanWords words, Detail detail) {
        this.plan = plan;
        this.words = words;
        this.phrases = words.phrases();
        this.detail = detail;
    }

    /** Whether a step has one line only. */
    boolean isBrief(Rung rung) {
        return rung.number() > detail.whole() && !isAgain(rung);
    }

    /** What it is and what it takes, and its marks, which are never left out. */
    void brief(Rung rung, Column cell, Column advice) {
        String taken = rung.equipment().roles().stream().flatMap(role -> role.chosen().stream())
                .map(words.equipment()::label).collect(Collectors.joining("; "));
        String title = words.rungs().title(rung);
        cell.small(taken.isEmpty() ? title : phrases.fill("sheet.marked", title, taken));
        words.rungs().marks(rung).forEach(mark -> advice.warning(mark, advice.style().small().bold()));
    }

    /** What it is, and why it stands here. */
    void step(Rung rung, Column cell) {
        cell.strong(words.rungs().title(rung));
        words.rungs().marks(rung).stream().filter(mark -> !isAgain(rung))
                .forEach(mark -> cell.warning(mark, cell.style().small().bold()));
        if (!isAgain(rung) && detail.tells(Omission.CHANGES)) {
            cell.muted(words.rungs().kind(rung));
        }
        if (rung.isSetup() && !words.rungs().block(rung, plan).isEmpty()) {
            cell.muted(phrases.fill("sheet.block", words.rungs().block(rung, plan)));
        }
        if (detail.tells(Omission.CHANCES)) {
            cell.muted(words.rungs().chanceInBrief(rung));
        }
    }

    /** What to take from the shelf; nothing for a later try, which goes on with what is there. */
    void take(Rung rung, Column cell) {
        if (isAgain(rung)) {
            return;
        }
        if (rung.equipment().roles().isEmpty()) {
            cell.small(phrases.get("sheet.nothingToTake"));
        } else {
            rung.equipment().roles().forEach(role -> role(role, cell));
        }
    }

    private void role(RoleAnswer role, Column cell) {
        PageStyle style = cell.style();
        role.chosen().ifPresent(c -> cell.signed(Column.verdict(words.fits().look(c.suitability())), phrases
                .fill("sheet.fit", words.equipment().labelled(role.role(), c), words.fits().shortest(c.suitability())),
                cell.name()));
        if (detail.tells(Omission.NEEDS)) {
            cell.muted(phrases.fill("sheet.asked", words.roles().asked(role.role())));
        }
        role.chosen().ifPresent(c -> c.supply().picks()
                .forEach(pick -> cell.box(words.equipment().box(pick), style.small())));
        if (detail.tells(Omission.CHOICES)) {
            cell.muted(words.equipment().why(role));
        }
    }

    /** What it changes, what to watch, when to give it up. */
    void advice(Rung rung, Column cell) {
        PageStyle style = cell.style();
        if (isAgain(rung)) {
            cell.small(phrases.fill("sheet.again", Integer.toString(first(rung).number())));
            return;
        }
        if (detail.tells(Omission.CHANGES)) {
            Stream.concat(words.rungs().changes(rung).stream(), rung.move().advice().changes().stream())
                    .forEach(cell::small);
        }
        List<String> cautions = cautions(rung);
        if (detail.tells(Omission.CAUTIONS) || cautions.size() <= 1) {
            cautions.forEach(caution -> cell.warning(caution, style.small()));
        } else {
            cell.warning(phrases.fill("sheet.firstCaution", Integer.toString(cautions.size()), cautions.get(0)),
                    style.small());
        }
        if (!rung.move().advice().stop().isBlank()) {
            cell.signed(StopSign::draw,
                    phrases.fill("sheet.giveUp", rung.move().advice().stop()), style.small().bold());
        }
        if (rung.isSetup()) {
            cell.small(words.rungs().delivery(rung));
        }
    }

    private List<String> cautions(Rung rung) {
        Stream<String> fresh = ofFit(rung).filter(caution -> detail.tells(Omission.REPEATED) || plan.rungs().stream()
                .limit(rung.number() - 1L).flatMap(this::ofFit).noneMatch(caution::equals));
        return Stream.concat(rung.move().advice().cautions().stream(), fresh).distinct().toList();
    }

    /** Cautions of the fit solver. */
    private Stream<String> ofFit(Rung rung) {
        return rung.equipment().roles().stream().flatMap(role -> role.chosen().stream())
                .flatMap(c -> words.fits().cautions(c.suitability()).stream());
    }

    /** Whether an earlier step of the plan makes the same move, so that its row can be short. */
    boolean isAgain(Rung rung) {
        return first(rung).number() != rung.number();
    }

    /** The first step of the plan that makes the same move. */
    private Rung first(Rung rung) {
        return plan.rungs().stream().filter(other -> other.move().id().equals(rung.move().id())).findFirst()
                .orElse(rung);
    }
}
