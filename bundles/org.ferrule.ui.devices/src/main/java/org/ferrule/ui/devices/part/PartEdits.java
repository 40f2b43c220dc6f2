/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CommandWrapper;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.look.ModelLabels;

/** Adds, overrides, copies and deletes parts, each by one command that can be undone. */
public final class PartEdits {

    private final DocumentSession session;

    /** Creates edits in a document. */
    public PartEdits(DocumentSession session) {
        this.session = session;
    }

    /** Adds a new part at the end and returns it. What holds it is overridden too, if it is only inherited. */
    public EObject add(Shown holder, EReference feature) {
        EObject part = EcoreUtil.create(feature.getEReferenceType());
        name(part, holder.parts(feature).stream().map(Shown::complete).toList());
        put(holder, feature, part, "Addition of " + word(part));
        return part;
    }

    /** States for the device itself what it inherits, value by value to come, and returns the new part. */
    public EObject override(Shown inherited) {
        Overriding overriding = new Overriding(session.domain());
        EObject part = overriding.override(inherited);
        run(overriding.command(), "Override of " + word(part));
        return part;
    }

    /** Adds a copy behind an object of a list, under another id, and returns it. */
    public EObject duplicate(EObject original) {
        EReference feature = original.eContainmentFeature();
        List<?> siblings = (List<?>) original.eContainer().eGet(feature);
        EObject copy = EcoreUtil.copy(original);
        name(copy, siblings.stream().map(EObject.class::cast).toList());
        run(AddCommand.create(session.domain(), original.eContainer(), feature, copy, siblings.indexOf(original) + 1),
                "Duplication of " + word(copy));
        return copy;
    }

    /** Deletes objects; what names them still does. */
    public void delete(List<EObject> objects) {
        CompoundCommand all = new CompoundCommand();
        objects.forEach(object -> all.append(deletion(object)));
        run(all.unwrap(), "Deletion of " + ModelLabels.several(objects));
    }

    private Command deletion(EObject object) {
        return object.eContainmentFeature().isMany() ? RemoveCommand.create(session.domain(), object)
                : SetCommand.create(session.domain(), object.eContainer(), object.eContainmentFeature(),
                        SetCommand.UNSET_VALUE);
    }

    /** Gives values to parts, all in one step; a part that is only inherited is overridden for the size. */
    public void set(List<PartValue> values, String label) {
        Overriding all = new Overriding(session.domain());
        values.forEach(value -> all.set(value.part(), value.feature(), value.value()));
        run(all.command(), label);
    }

    private void put(Shown holder, EReference feature, EObject part, String label) {
        Overriding overriding = new Overriding(session.domain());
        overriding.put(holder, feature, part);
        run(overriding.command(), label);
    }

    private void run(Command command, String label) {
        session.execute(new CommandWrapper(label, "", command));
    }

    private static String word(EObject object) {
        return ModelLabels.type(object.eClass()).toLowerCase(Locale.ENGLISH);
    }

    /** Gives a part an id, or else a name, that no sibling has. */
    private static void name(EObject part, List<EObject> siblings) {
        EAttribute key = Keys.of(part.eClass());
        if (key == null) {
            return;
        }
        Set<Object> taken = siblings.stream().map(sibling -> sibling.eGet(key)).collect(Collectors.toSet());
        String stem = part.eIsSet(key) ? part.eGet(key) + "-copy" : word(part).replace(' ', '-');
        int number = part.eIsSet(key) ? 1 : siblings.size() + 1;
        String wanted = part.eIsSet(key) ? stem : stem + "-" + number;
        while (taken.contains(wanted)) {
            number++;
            wanted = stem + "-" + number;
        }
        part.eSet(key, wanted);
    }
}
