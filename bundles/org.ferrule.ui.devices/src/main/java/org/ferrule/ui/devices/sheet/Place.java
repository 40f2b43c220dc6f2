/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.sheet;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.ferrule.ui.devices.part.Shown;

/**
 * Where a figure of a device stands: in the device itself or in one of its parts, its own or its line's.
 *
 * @param part what states the figure, or could
 * @param feature the feature of the part
 */
public record Place(Shown part, EAttribute feature) {

    /** Returns the value that holds, stated or inherited; null for none. */
    public Object value() {
        return part.complete().eIsSet(feature) ? part.complete().eGet(feature) : null;
    }

    /** Tells whether the value comes from the line. */
    public boolean inherited() {
        return value() != null && part.own().filter(own -> own.eIsSet(feature)).isEmpty();
    }

    /**
     * Returns the command that states another value for the device alone; what is only inherited is overridden.
     *
     * @param value the value, or null to state none, and so to inherit again
     */
    public Command command(EditingDomain domain, Object value) {
        Object wanted = value == null ? SetCommand.UNSET_VALUE : value;
        if (part.own().isPresent()) {
            return SetCommand.create(domain, part.own().get(), feature, wanted);
        }
        EObject bare = bare(part);
        if (value != null) {
            bare.eSet(feature, value);
        }
        return put(domain, part.holder(), part.place(), bare);
    }

    private static Command put(EditingDomain domain, Shown holder, EReference place, EObject part) {
        if (holder.own().isPresent()) {
            EObject owner = holder.own().get();
            return place.isMany() ? AddCommand.create(domain, owner, place, part)
                    : SetCommand.create(domain, owner, place, part);
        }
        EObject around = bare(holder);
        around.eSet(place, place.isMany() ? new ArrayList<>(List.of(part)) : part);
        return put(domain, holder.holder(), holder.place(), around);
    }

    /** A part that states nothing but the name by which it is matched with the line's. */
    private static EObject bare(Shown inherited) {
        EObject part = EcoreUtil.create(inherited.complete().eClass());
        EStructuralFeature name = part.eClass().getEStructuralFeature("name");
        if (name != null) {
            part.eSet(name, inherited.complete().eGet(name));
        }
        return part;
    }
}
