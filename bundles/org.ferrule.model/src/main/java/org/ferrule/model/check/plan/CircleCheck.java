/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model.check.plan;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.Move;
import org.ferrule.model.Technique;
import org.ferrule.model.TechniqueLibrary;
import org.ferrule.model.check.Check;
import org.ferrule.model.check.Examination;
import org.ferrule.model.check.ProblemCode;

/** No set-up needs itself to be in place, and no technique itself to be tried before, be it by way of others. */
final class CircleCheck implements Check {

    @Override
    public void check(EObject object, Examination examination) {
        if (object instanceof TechniqueLibrary library) {
            checkAll(library.getSetups(), Move::getSetups, Literals.MOVE__SETUPS, examination);
            checkAll(library.getTechniques(), Technique::getAfter, Literals.TECHNIQUE__AFTER, examination);
        }
    }

    private static <M extends Move> void checkAll(List<M> moves, Function<? super M, List<String>> before,
            EStructuralFeature feature, Examination examination) {
        for (M move : moves) {
            if (move.getId() != null && before(move, moves, before).contains(move.getId())) {
                examination.add(ProblemCode.CIRCULAR_REFERENCE, move, feature, move.getId());
            }
        }
    }

    private static <M extends Move> Set<String> before(M move, List<M> moves,
            Function<? super M, List<String>> before) {
        Set<String> found = new HashSet<>();
        Deque<String> left = new ArrayDeque<>(before.apply(move));
        while (!left.isEmpty()) {
            String id = left.pop();
            if (found.add(id)) {
                moves.stream().filter(m -> Objects.equals(id, m.getId())).forEach(m -> left.addAll(before.apply(m)));
            }
        }
        return found;
    }
}
