/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.engine.translate.SourceIndex;
import org.ferrule.escalation.technique.Advice;
import org.ferrule.escalation.technique.Axis;
import org.ferrule.escalation.technique.Hazard;
import org.ferrule.escalation.technique.Need;
import org.ferrule.escalation.technique.Placement;
import org.ferrule.escalation.technique.PlannedTry;
import org.ferrule.escalation.technique.Published;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Setup;
import org.ferrule.escalation.technique.Slot;
import org.ferrule.escalation.technique.Technique;
import org.ferrule.model.Advised;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.Move;
import org.ferrule.model.TechniqueLibrary;
import org.ferrule.quantity.Length;

/**
 * Copies set-ups and techniques. A condition or a part of one that cannot be read becomes a need that never holds.
 */
final class MoveTranslator {
    private final SourceIndex sources;
    private final RoleTranslator roles;
    private final NeedTranslator needs;
    private final TryTranslator tries;
    private final Undescribed undescribed;
    private final PlanProblems problems;
    private final PlanFigures figures;
    private final Predicate<String> isSetup;
    private final Predicate<String> isTechnique;

    MoveTranslator(TechniqueLibrary library, RoleTranslator roles, Undescribed undescribed, PlanProblems problems) {
        this.sources = new SourceIndex(library);
        this.roles = roles;
        this.undescribed = undescribed;
        this.problems = problems;
        this.figures = new PlanFigures(problems);
        this.needs = new NeedTranslator(undescribed, figures);
        this.tries = new TryTranslator(undescribed, figures);
        this.isSetup = id -> library.getSetups().stream().anyMatch(s -> id.equals(s.getId()));
        this.isTechnique = id -> library.getTechniques().stream().anyMatch(t -> id.equals(t.getId()));
    }

    Setup setup(org.ferrule.model.Setup setup) {
        List<Need> must = needs.translate(setup);
        Hazard hazard = hazard(setup, must);
        Set<String> before = known(setup, Literals.MOVE__SETUPS, setup.getSetups(), isSetup, "set-up", must);
        List<Role> played = roles.translate(setup.getRoles());
        List<Placement> leaves = setup.getLeaves().stream().flatMap(p -> placement(p, played, must).stream()).toList();
        return new Setup(setup.getId(), name(setup), hazard, played, must, before, leaves, figures.costs(setup),
                setup.isExchangesWire(), advice(setup));
    }

    Technique technique(org.ferrule.model.Technique technique) {
        List<Need> must = needs.translate(technique);
        Hazard hazard = hazard(technique, must);
        if (!technique.isSetAxis()) {
            undescribed.need(must, technique, Literals.TECHNIQUE__AXIS, "does not say what it does about the lesion");
        }
        Set<String> before = known(technique, Literals.MOVE__SETUPS, technique.getSetups(), isSetup, "set-up", must);
        Set<String> after = known(technique, Literals.TECHNIQUE__AFTER, technique.getAfter(), isTechnique,
                "technique", must);
        List<PlannedTry> planned = tries.translate(technique.getTries(), must);
        return new Technique(technique.getId(), name(technique), Axis.ofWord(technique.getAxis().getLiteral()), hazard,
                roles.translate(technique.getRoles()), must, before, after, planned, advice(technique));
    }

    private Hazard hazard(Move move, List<Need> must) {
        if (!move.isSetHazard()) {
            undescribed.need(must, move, Literals.MOVE__HAZARD, "does not say how much harm it can do");
        }
        return Hazard.ofWord(move.getHazard().getLiteral());
    }

    private Set<String> known(Move move, EStructuralFeature feature, List<String> ids, Predicate<String> isKnown,
            String what, List<Need> must) {
        Set<String> known = new LinkedHashSet<>();
        for (String id : ids) {
            if (isKnown.test(id)) {
                known.add(id);
            } else {
                undescribed.need(must, move, feature, "needs the " + what + " \"" + id + "\", which nobody describes");
            }
        }
        return known;
    }

    private Optional<Placement> placement(org.ferrule.model.Placement written, List<Role> played, List<Need> must) {
        if (!written.isSetSlot() || played.stream().noneMatch(r -> r.id().equals(written.getRole()))) {
            undescribed.need(must, written, Literals.PLACEMENT__ROLE, "it is not said which role is left where");
            return Optional.empty();
        }
        Slot slot = Slot.ofWord(written.getSlot().getLiteral());
        Optional<Length> protrusion = figures.length(written, Literals.PLACEMENT__PROTRUSION);
        if (slot != Slot.EXTENSION) {
            protrusion.ifPresent(p -> problems.add(written, Literals.PLACEMENT__PROTRUSION,
                    "only a guide extension protrudes"));
            return Optional.of(new Placement(slot, written.getRole(), Optional.empty()));
        }
        if (protrusion.isEmpty()) {
            undescribed.need(must, written, Literals.PLACEMENT__PROTRUSION,
                    "it is not said how far the guide extension protrudes");
            return Optional.empty();
        }
        return Optional.of(new Placement(slot, written.getRole(), protrusion));
    }

    private static String name(Move move) {
        return move.getName() == null ? move.getId() : move.getName();
    }

    private Advice advice(Advised advised) {
        return new Advice(advised.getChanges(), advised.getCautions(), Optional.ofNullable(advised.getOffLabel()),
                text(advised.getStop()), advised.getPublished().stream().map(this::published).toList(),
                sources.of(advised));
    }

    private Published published(org.ferrule.model.Published published) {
        return new Published(text(published.getText()), sources.of(published));
    }

    private static String text(String value) {
        return value == null ? "" : value;
    }
}
