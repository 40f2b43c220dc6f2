/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.part;

import java.util.ArrayList;
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
import org.eclipse.emf.edit.command.MoveCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.ferrule.ui.document.DocumentSession;
import org.ferrule.ui.look.ModelLabels;

/** Adds, overrides, copies, moves and deletes parts, each by one command that can be undone. */
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
        EObject part = Overriding.bare(inherited);
        put(inherited.holder(), inherited.place(), part, "Override of " + word(part));
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
        run(all.unwrap(), "Deletion of " + what(objects));
    }

    private static String what(List<EObject> objects) {
        return objects.size() == 1 ? word(objects.get(0)) : objects.size() + " objects";
    }

    private Command deletion(EObject object) {
        return object.eContainmentFeature().isMany() ? RemoveCommand.create(session.domain(), object)
                : SetCommand.create(session.domain(), object.eContainer(), object.eContainmentFeature(),
                        SetCommand.UNSET_VALUE);
    }

    /** Moves objects of one list in front of the place that is given; they stand together there, in their order. */
    public void move(List<EObject> objects, int before) {
        List<EObject> siblings = siblings(objects.get(0));
        List<EObject> wanted = new ArrayList<>(siblings.subList(0, before));
        wanted.removeAll(objects);
        wanted.addAll(siblings.stream().filter(objects::contains).toList());
        siblings.stream().filter(other -> !wanted.contains(other)).forEach(wanted::add);
        Command command = reordering(siblings, wanted);
        if (!wanted.equals(siblings)) {
            run(command, "Move of " + what(objects));
        }
    }

    private Command reordering(List<EObject> siblings, List<EObject> wanted) {
        CompoundCommand all = new CompoundCommand();
        List<EObject> now = new ArrayList<>(siblings);
        for (int i = 0; i < wanted.size(); i++) {
            EObject next = wanted.get(i);
            if (now.get(i) != next) {
                now.remove(next);
                now.add(i, next);
                all.append(moving(next, i));
            }
        }
        return all.unwrap();
    }

    private Command moving(EObject object, int to) {
        return MoveCommand.create(session.domain(), object.eContainer(), object.eContainmentFeature(), object, to);
    }

    /** Returns the list of the document that an object stands in. */
    static List<EObject> siblings(EObject object) {
        return ((List<?>) object.eContainer().eGet(object.eContainmentFeature())).stream().map(EObject.class::cast)
                .toList();
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
