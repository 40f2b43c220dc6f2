/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import static org.ferrule.model.LabelText.joined;
import static org.ferrule.model.LabelText.number;

import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.common.util.Enumerator;
import org.ferrule.model.util.ModelSwitch;

/** The labels of what stands in techniques, cases and shelves. */
final class PlanLabels extends ModelSwitch<String> {

    private final String type;

    PlanLabels(String type) {
        this.type = type;
    }

    @Override
    public String caseFact(Fact fact) {
        return joined(" \u2014 ", fact.getId(), fact.getWords());
    }

    @Override
    public String caseMove(Move move) {
        return joined(" \u2014 ", move.getId(), move.getName());
    }

    @Override
    public String caseRole(Role role) {
        return joined(" \u2014 ", role.getId(), role.getName());
    }

    @Override
    public String caseNeed(Need need) {
        return first(need.getFact(), said("vessel", need.getVessel()), said("branch", need.getBranch()));
    }

    @Override
    public String casePlacement(Placement placement) {
        return joined(": ", word(placement.isSetSlot(), placement.getSlot()), placement.getRole());
    }

    @Override
    public String casePlannedTry(PlannedTry planned) {
        return joined(" ", type, said("of", number(planned.getMinutes()), "min"));
    }

    @Override
    public String casePrior(Prior prior) {
        return joined(": ", joined(" to ", number(prior.getSuccesses()), number(prior.getFailures())),
                prior.getLabel());
    }

    @Override
    public String casePublished(Published published) {
        return published.getText();
    }

    @Override
    public String caseStopRule(StopRule rule) {
        return joined(" \u2014 ", rule.getId(), rule.getWords());
    }

    @Override
    public String caseSystemInPlace(SystemInPlace system) {
        return joined(", ", system.getGuide(), system.getMainWire());
    }

    @Override
    public String caseSideBranch(SideBranch branch) {
        return joined(", ", branch.getName(), branch.getDiameter());
    }

    @Override
    public String caseAccess(Access access) {
        return joined(", ", access.getSite(), access.getVessel());
    }

    @Override
    public String caseStatedFact(StatedFact stated) {
        return joined(": ", stated.getFact(), stated.isSetHolds() ? stated.isHolds() ? "yes" : "no" : null);
    }

    @Override
    public String caseLoggedAttempt(LoggedAttempt attempt) {
        return joined(": ", attempt.getMove(), word(attempt.isSetOutcome(), attempt.getOutcome()));
    }

    @Override
    public String caseUsedUnit(UsedUnit unit) {
        return joined(", ", unit.getItem(), said("lot", unit.getLot()));
    }

    @Override
    public String caseClosedStep(ClosedStep step) {
        return joined(" \u2014 ", step.getMove(), step.getName());
    }

    @Override
    public String caseClosedDevice(ClosedDevice device) {
        return joined(", ", device.getId(), said("lot", device.getLot()));
    }

    @Override
    public String caseDocumentHash(DocumentHash hash) {
        return joined(", ", hash.getFile(), said("revision", hash.getRevision()));
    }

    @Override
    public String caseStockItem(StockItem item) {
        return joined(" \u2014 ", item.getId(), item.getName());
    }

    @Override
    public String caseStockLot(StockLot lot) {
        return joined(", ", said(type, first(lot.getLot(), lot.getSerial())), lot.getExpiry());
    }

    private static String first(String... texts) {
        return Stream.of(texts).filter(Objects::nonNull).findFirst().orElse(null);
    }

    private static String word(boolean given, Enumerator word) {
        return given ? word.getLiteral() : null;
    }

    /** A value with words around it; null without one. */
    private static String said(String before, Object value, String... after) {
        return Optional.ofNullable(value).map(v -> joined(" ", before, v, joined(" ", (Object[]) after)))
                .orElse(null);
    }
}
