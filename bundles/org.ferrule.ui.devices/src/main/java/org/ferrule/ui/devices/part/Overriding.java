/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.ferrule.model.DeviceResolution;

/**
 * Collects commands that state something for a device alone; what is only inherited, and what holds it, is overridden,
 * once for all that is stated in it.
 */
public final class Overriding {

    private final EditingDomain domain;
    private final CompoundCommand commands = new CompoundCommand();
    private final Map<Shown, EObject> overrides = new HashMap<>();

    Overriding(EditingDomain domain) {
        this.domain = domain;
    }

    /**
     * Returns the command that gives a part a value.
     *
     * @param value the value, or null to state none, and so to inherit again
     */
    public static Command set(EditingDomain domain, Shown part, EAttribute feature, Object value) {
        Overriding overriding = new Overriding(domain);
        overriding.set(part, feature, value);
        return overriding.command();
    }

    /** Returns the command that does all that was asked for; none can be asked for afterwards. */
    Command command() {
        return commands.unwrap();
    }

    /** Gives a part a value, or none. */
    void set(Shown part, EAttribute feature, Object value) {
        if (part.own().isPresent()) {
            commands.append(SetCommand.create(domain, part.own().get(), feature,
                    value == null ? SetCommand.UNSET_VALUE : value));
            return;
        }
        EObject own = override(part);
        if (value != null) {
            own.eSet(feature, value);
        }
    }

    /** The part that takes the place of one that is only inherited. */
    EObject override(Shown inherited) {
        if (!overrides.containsKey(inherited) && DeviceResolution.isStatedWhole(inherited.place())) {
            overrideAll(inherited.holder(), inherited.place());
        } else if (!overrides.containsKey(inherited)) {
            overrideAlone(inherited);
        }
        return overrides.get(inherited);
    }

    private void overrideAll(Shown holder, EReference place) {
        holder.parts(place).stream().filter(part -> part.isInherited() && !overrides.containsKey(part))
                .forEach(this::overrideAlone);
    }

    private void overrideAlone(Shown inherited) {
        EObject part = bare(inherited);
        overrides.put(inherited, part);
        append(inherited.holder(), inherited.place(), part);
    }

    /** Puts a new part into what holds it, behind those that it holds already. */
    void put(Shown holder, EReference place, EObject part) {
        if (DeviceResolution.isStatedWhole(place)) {
            overrideAll(holder, place);
        }
        append(holder, place, part);
    }

    private void append(Shown holder, EReference place, EObject part) {
        if (holder.own().isEmpty()) {
            attach(override(holder), place, part);
            return;
        }
        EObject owner = holder.own().get();
        commands.append(place.isMany() ? AddCommand.create(domain, owner, place, part)
                : SetCommand.create(domain, owner, place, part));
    }

    private static void attach(EObject holder, EReference place, EObject part) {
        if (place.isMany()) {
            List<Object> parts = new ArrayList<>((List<?>) holder.eGet(place));
            parts.add(part);
            holder.eSet(place, parts);
        } else {
            holder.eSet(place, part);
        }
    }

    /** Returns a part that states what it must, and the name by which it is matched with the line's. */
    private static EObject bare(Shown inherited) {
        EObject part = EcoreUtil.create(inherited.complete().eClass());
        part.eClass().getEAllAttributes().stream().filter(attribute -> attribute.isRequired() || isName(attribute))
                .filter(inherited.complete()::eIsSet)
                .forEach(attribute -> part.eSet(attribute, inherited.complete().eGet(attribute)));
        return part;
    }

    private static boolean isName(EStructuralFeature feature) {
        return feature.getName().equals("name");
    }
}
