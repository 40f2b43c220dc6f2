/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.model.DeviceLibrary;
import org.ferrule.model.Document;
import org.ferrule.model.Move;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.TechniqueLibrary;

/** Ids are unique among the elements of one sort of a document, and references can name them. */
final class IdCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof Document document) {
            checkAll(document.getSources(), "source", examination);
        }
        if (object instanceof DeviceLibrary library) {
            checkAll(library.getLines(), "line", examination);
            checkAll(library.getDevices(), "device", examination);
        }
        if (object instanceof TechniqueLibrary library) {
            checkAll(library.getFacts(), "fact", examination);
            checkAll(moves(library), "technique or set-up", examination);
            checkAll(library.getBailOut(), "role", examination);
            checkAll(library.getStopRules(), "stop rule", examination);
        }
        if (object instanceof Move move) {
            checkAll(move.getRoles(), "role", examination);
        }
        if (object instanceof ShelfDocument shelf) {
            checkAll(shelf.getItems(), "item", examination);
        }
    }

    private static List<Move> moves(TechniqueLibrary library) {
        return Stream.<Move>concat(library.getSetups().stream(), library.getTechniques().stream()).toList();
    }

    private static void checkAll(List<? extends EObject> elements, String what, Examination examination) {
        Set<String> ids = new HashSet<>();
        for (EObject element : elements) {
            EStructuralFeature feature = element.eClass().getEStructuralFeature("id");
            String id = (String) element.eGet(feature);
            if (id != null && !ids.add(id)) {
                examination.add(ProblemCode.DUPLICATE_ID, element, feature, id, what);
            }
            if (id != null && !isUsable(id)) {
                examination.add(ProblemCode.UNUSABLE_ID, element, feature, id);
            }
        }
    }

    private static boolean isUsable(String id) {
        return !id.isEmpty() && id.equals(id.strip()) && id.indexOf('#') < 0 && id.indexOf('!') < 0;
    }
}
