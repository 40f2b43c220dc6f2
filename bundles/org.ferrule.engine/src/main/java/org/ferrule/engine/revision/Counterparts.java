/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.engine.revision;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Which parts of two lists are the same: by id, else by name; those without either if they say the same, and what is
 * left then in its order. Where a key stands more than once, the first goes with the first.
 */
final class Counterparts {

    private final Map<EObject, EObject> pairs = new LinkedHashMap<>();
    private final List<EObject> removed = new ArrayList<>();
    private final List<EObject> added = new ArrayList<>();

    Counterparts(List<EObject> before, List<EObject> after) {
        Map<String, EObject> keyed = new HashMap<>();
        List<EObject> loose = new ArrayList<>();
        Map<String, Integer> seen = new HashMap<>();
        before.forEach(part -> key(part).ifPresentOrElse(key -> keyed.put(number(key, seen), part),
                () -> loose.add(part)));
        List<EObject> looseAfter = new ArrayList<>();
        Map<String, Integer> seenAfter = new HashMap<>();
        for (EObject part : after) {
            Optional<String> key = key(part);
            EObject former = key.map(k -> keyed.remove(number(k, seenAfter))).orElse(null);
            if (former != null) {
                pairs.put(former, part);
            } else {
                (key.isPresent() ? added : looseAfter).add(part);
            }
        }
        before.stream().filter(keyed::containsValue).forEach(removed::add);
        pairLoose(loose, looseAfter);
    }

    private static String number(String key, Map<String, Integer> seen) {
        return key + "\n" + seen.merge(key, 1, Integer::sum);
    }

    private static Optional<String> key(EObject part) {
        return Stream.of("id", "name").map(part.eClass()::getEStructuralFeature).map(f -> text(part, f))
                .flatMap(Optional::stream).findFirst();
    }

    /** A lumen section's id is a diameter, and no key. */
    private static Optional<String> text(EObject part, EStructuralFeature feature) {
        return feature == null ? Optional.empty()
                : Optional.ofNullable(part.eGet(feature)).filter(String.class::isInstance).map(String.class::cast);
    }

    private void pairLoose(List<EObject> before, List<EObject> after) {
        for (EObject part : List.copyOf(before)) {
            after.stream().filter(other -> EcoreUtil.equals(part, other)).findFirst().ifPresent(same -> {
                before.remove(part);
                after.remove(same);
                pairs.put(part, same);
            });
        }
        int common = Math.min(before.size(), after.size());
        for (int i = 0; i < common; i++) {
            pairs.put(before.get(i), after.get(i));
        }
        removed.addAll(before.subList(common, before.size()));
        added.addAll(after.subList(common, after.size()));
    }

    Map<EObject, EObject> pairs() {
        return pairs;
    }

    List<EObject> removed() {
        return removed;
    }

    List<EObject> added() {
        return added;
    }
}
