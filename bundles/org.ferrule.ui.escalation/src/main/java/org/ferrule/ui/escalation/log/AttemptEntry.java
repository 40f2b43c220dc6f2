/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.log;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.common.command.CommandWrapper;
import org.eclipse.emf.edit.command.AddCommand;
import org.ferrule.escalation.equipment.RoleAnswer;
import org.ferrule.escalation.plan.Rung;
import org.ferrule.model.AttemptOutcome;
import org.ferrule.model.LoggedAttempt;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.UsedUnit;
import org.ferrule.shelf.stock.Pick;
import org.ferrule.ui.document.DocumentSession;

/**
 * An attempt as it is about to be logged.
 *
 * @param rung what was done
 * @param outcome how it ended
 * @param minutes that it took
 * @param contrastMl that it took
 * @param doseMgy that it took
 * @param money that it took
 * @param opened whether the boxes of the plan were opened, so that they are gone from the shelf
 * @param remark in words; may be empty
 */
record AttemptEntry(Rung rung, AttemptOutcome outcome, BigDecimal minutes, BigDecimal contrastMl, BigDecimal doseMgy,
        BigDecimal money, boolean opened, String remark) {

    /** Adds it to the log, by a command that can be undone. */
    void log(DocumentSession session) {
        AddCommand adding = (AddCommand) AddCommand.create(session.domain(), session.document().orElseThrow(),
                Literals.CASE_DOCUMENT__LOG, attempt());
        session.execute(new CommandWrapper("Logging of " + rung.move().name(), "", adding));
    }

    private LoggedAttempt attempt() {
        LoggedAttempt attempt = ModelFactory.eINSTANCE.createLoggedAttempt();
        attempt.setMove(rung.move().id());
        attempt.setOutcome(outcome);
        attempt.setMinutes(orNothing(minutes));
        attempt.setContrastMl(orNothing(contrastMl));
        attempt.setDoseMgy(orNothing(doseMgy));
        attempt.setMoney(orNothing(money));
        if (opened) {
            attempt.getUnits().addAll(units());
        }
        if (!remark.isBlank()) {
            attempt.setRemark(remark.strip());
        }
        return attempt;
    }

    private static BigDecimal orNothing(BigDecimal amount) {
        return amount.signum() == 0 ? null : amount;
    }

    private List<UsedUnit> units() {
        List<UsedUnit> units = new ArrayList<>();
        for (RoleAnswer role : rung.equipment().roles()) {
            role.chosen().ifPresent(candidate -> candidate.supply().picks().stream().filter(rung.taken()::contains)
                    .forEach(pick -> add(units, role.role().id(), pick)));
        }
        return units;
    }

    private static void add(List<UsedUnit> units, String role, Pick pick) {
        for (int i = 0; i < pick.count(); i++) {
            UsedUnit unit = ModelFactory.eINSTANCE.createUsedUnit();
            unit.setRole(role);
            unit.setItem(pick.item());
            if (!pick.lot().lot().isEmpty()) {
                unit.setLot(pick.lot().lot());
            }
            units.add(unit);
        }
    }
}
