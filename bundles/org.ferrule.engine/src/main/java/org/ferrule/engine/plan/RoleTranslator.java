/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.plan;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.engine.translate.Words;
import org.ferrule.escalation.technique.Carrier;
import org.ferrule.escalation.technique.Goal;
import org.ferrule.escalation.technique.LengthRange;
import org.ferrule.escalation.technique.Role;
import org.ferrule.escalation.technique.Selection;
import org.ferrule.escalation.technique.ShareRange;
import org.ferrule.escalation.technique.Task;
import org.ferrule.model.ModelPackage.Literals;

/** Copies roles. One that cannot be read as it is written can be played by nothing. */
final class RoleTranslator {
    /** Names no device, and no device can be called so. */
    private static final Selection NOBODY = new Selection(Set.of(), Set.of("#"), LengthRange.ANY, LengthRange.ANY,
            LengthRange.ANY, ShareRange.ANY, Optional.empty());

    private final DeviceIds devices;
    private final PlanProblems problems;
    private final PlanFigures figures;

    RoleTranslator(DeviceIds devices, PlanProblems problems) {
        this.devices = devices;
        this.problems = problems;
        this.figures = new PlanFigures(problems);
    }

    /** The roles of a move, or those for bail-out. */
    List<Role> translate(List<org.ferrule.model.Role> roles) {
        return roles.stream().map(this::role).toList();
    }

    private Role role(org.ferrule.model.Role role) {
        String id = role.getId() == null ? "" : role.getId();
        int count = role.getCount();
        Optional<Selection> selection = selection(role);
        if (count < 1) {
            problems.add(role, Literals.ROLE__COUNT, "asks for " + count + " devices");
            selection = Optional.empty();
        }
        return new Role(id, role.getName() == null ? id : role.getName(), selection.orElse(NOBODY),
                Task.ofWord(role.getTask().getLiteral()), Carrier.ofWord(role.getCarrier().getLiteral()),
                Goal.ofWord(role.getGoal().getLiteral()), Math.max(1, count), role.isOnlyIfWireIsShort());
    }

    private Optional<Selection> selection(org.ferrule.model.Role role) {
        boolean device = !role.getKinds().isEmpty() || !role.getDevices().isEmpty();
        if (device == (role.getEquipment() != null)) {
            problems.add(role, device ? "asks for a device and for equipment: only one of both can be meant"
                    : "names neither a kind, nor a device, nor equipment");
            return Optional.empty();
        }
        Optional<LengthRange> diameter = range(role, Literals.ROLE__NOMINAL_DIAMETER);
        Optional<LengthRange> length = range(role, Literals.ROLE__NOMINAL_LENGTH);
        Optional<LengthRange> wire = range(role, Literals.ROLE__WIRE);
        Optional<ShareRange> share = share(role);
        if (diameter.isEmpty() || length.isEmpty() || wire.isEmpty() || share.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Selection(Words.kinds(role.getKinds()), deviceIds(role), diameter.get(), length.get(),
                wire.get(), share.get(), Optional.ofNullable(role.getEquipment())));
    }

    private Set<String> deviceIds(org.ferrule.model.Role role) {
        Set<String> ids = new LinkedHashSet<>();
        role.getDevices().forEach(reference -> ids.add(devices.id(role, Literals.ROLE__DEVICES, reference)));
        return ids;
    }

    /** Any length where none is stated; nothing where it cannot be read. */
    private Optional<LengthRange> range(org.ferrule.model.Role role, EStructuralFeature feature) {
        return role.eIsSet(feature) ? figures.range(role, feature) : Optional.of(LengthRange.ANY);
    }

    private Optional<ShareRange> share(org.ferrule.model.Role role) {
        OptionalDouble from = figures.optionalAmount(role, Literals.ROLE__TO_VESSEL_FROM);
        OptionalDouble to = figures.optionalAmount(role, Literals.ROLE__TO_VESSEL_TO);
        try {
            return Optional.of(new ShareRange(from, to));
        } catch (IllegalArgumentException e) {
            problems.add(role, Literals.ROLE__TO_VESSEL_TO, e.getMessage());
            return Optional.empty();
        }
    }
}
