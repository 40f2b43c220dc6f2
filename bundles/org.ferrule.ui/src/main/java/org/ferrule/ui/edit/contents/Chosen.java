/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.contents;

import java.util.List;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.viewers.IStructuredSelection;

/**
 * What is selected in a tree of contents.
 *
 * @param all groups and elements, in the order of the tree
 */
record Chosen(List<?> all) {

    static Chosen of(IStructuredSelection selection) {
        List<?> all = selection.toList();
        return new Chosen(List.copyOf(all));
    }

    /** The only thing that is selected, if it is an element, or the document. */
    Optional<EObject> element() {
        return all.size() == 1 && all.get(0) instanceof EObject object ? Optional.of(object) : Optional.empty();
    }

    /** The elements that are selected; none if they are not all members of one group. */
    List<EObject> members() {
        boolean together = all.stream().map(Chosen::groupOf).distinct().count() == 1
                && all.get(0) instanceof EObject first && first.eContainer() != null;
        return together ? all.stream().map(EObject.class::cast).toList() : List.of();
    }

    private static Optional<Group> groupOf(Object element) {
        return element instanceof EObject object && object.eContainer() != null
                ? Optional.of(new Group(object.eContainer(), object.eContainmentFeature())) : Optional.empty();
    }

    /** The group that is selected, or that of the elements. */
    Optional<Group> group() {
        return isGroup() ? Optional.of((Group) all.get(0)) : members().stream().findFirst().flatMap(Chosen::groupOf);
    }

    /** Tells whether a group is selected, and nothing else. */
    boolean isGroup() {
        return all.size() == 1 && all.get(0) instanceof Group;
    }

    /** What is compared side by side: several elements, or all of a group. */
    List<EObject> compared() {
        return isGroup() ? ((Group) all.get(0)).members().stream().map(EObject.class::cast).toList() : members();
    }
}
