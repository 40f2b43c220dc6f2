/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.order;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.edit.command.MoveCommand;
import org.eclipse.emf.edit.domain.EditingDomain;

/** The order of a list after some of its elements were moved; these stand together then. */
public final class Reordering {

    private Reordering() {
    }

    /**
     * Returns a list in another order.
     *
     * @param all the list as it is
     * @param moved those that are moved; they keep the order that the list has them in
     * @param before in front of which place of the list, as it is, they are put; its size for the end
     */
    public static <T> List<T> together(List<T> all, Collection<T> moved, int before) {
        List<T> wanted = new ArrayList<>(all.subList(0, before));
        wanted.removeAll(moved);
        wanted.addAll(all.stream().filter(moved::contains).toList());
        all.subList(before, all.size()).stream().filter(other -> !moved.contains(other)).forEach(wanted::add);
        return wanted;
    }

    /** Before which place elements stand after a step up (-1) or down (1); nothing where there is no room for one. */
    static <T> Optional<Integer> step(List<T> all, Collection<T> moved, int by) {
        List<Integer> places = moved.stream().map(all::indexOf).sorted().toList();
        int before = by < 0 ? places.get(0) - 1 : places.get(places.size() - 1) + 2;
        return Optional.of(before).filter(place -> place >= 0 && place <= all.size());
    }

    /** Returns the list of the document that an element stands in. */
    public static List<EObject> siblings(EObject element) {
        return ((List<?>) element.eContainer().eGet(element.eContainmentFeature())).stream().map(EObject.class::cast)
                .toList();
    }

    /** Returns what puts the elements of a list into the wanted order; nothing if they stand in it. */
    static Optional<Command> command(EditingDomain domain, List<EObject> all, List<EObject> wanted) {
        CompoundCommand moves = new CompoundCommand();
        List<EObject> now = new ArrayList<>(all);
        for (int i = 0; i < wanted.size(); i++) {
            EObject next = wanted.get(i);
            if (now.get(i) != next) {
                now.remove(next);
                now.add(i, next);
                moves.append(MoveCommand.create(domain, next.eContainer(), next.eContainmentFeature(), next, i));
            }
        }
        return moves.isEmpty() ? Optional.empty() : Optional.of(moves.unwrap());
    }
}
