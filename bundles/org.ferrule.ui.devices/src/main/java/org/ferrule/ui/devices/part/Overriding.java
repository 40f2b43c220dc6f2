/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

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

/** Commands that state something for a device alone; what is only inherited, and what holds it, is overridden. */
public final class Overriding {

    private Overriding() {
    }

    /**
     * Returns the command that gives a part a value.
     *
     * @param value the value, or null to state none, and so to inherit again
     */
    public static Command set(EditingDomain domain, Shown part, EAttribute feature, Object value) {
        if (part.own().isPresent()) {
            return SetCommand.create(domain, part.own().get(), feature, value == null ? SetCommand.UNSET_VALUE : value);
        }
        EObject bare = bare(part);
        if (value != null) {
            bare.eSet(feature, value);
        }
        return put(domain, part.holder(), part.place(), bare);
    }

    /** Returns the command that puts a new part into what holds it, behind those that it holds already. */
    static Command put(EditingDomain domain, Shown holder, EReference place, EObject part) {
        if (holder.own().isPresent()) {
            EObject owner = holder.own().get();
            return place.isMany() ? AddCommand.create(domain, owner, place, part)
                    : SetCommand.create(domain, owner, place, part);
        }
        EObject around = bare(holder);
        around.eSet(place, place.isMany() ? new ArrayList<>(List.of(part)) : part);
        return put(domain, holder.holder(), holder.place(), around);
    }

    /** Returns a part that states nothing but the name by which it is matched with the line's. */
    static EObject bare(Shown inherited) {
        EObject part = EcoreUtil.create(inherited.complete().eClass());
        EStructuralFeature name = part.eClass().getEStructuralFeature("name");
        if (name != null) {
            part.eSet(name, inherited.complete().eGet(name));
        }
        return part;
    }
}
