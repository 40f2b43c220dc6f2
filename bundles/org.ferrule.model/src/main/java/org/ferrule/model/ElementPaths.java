/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.model;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * The paths of many objects of documents that do not change meanwhile, see {@link ElementPath}: each list is looked
 * through once.
 */
public final class ElementPaths {

    private static final Pattern USABLE = Pattern.compile("[^\\[\\]/]*[^\\d\\[\\]/][^\\[\\]/]*");

    private record Place(EObject holder, EStructuralFeature feature) {
    }

    /** How often each key is there, and where each object stands. */
    private record Listed(Map<String, Integer> keys, Map<EObject, Integer> places) {
    }

    private final Map<Place, Listed> lists = new HashMap<>();

    /** Returns the path of the object in its document. */
    public String of(EObject object) {
        EObject container = object.eContainer();
        if (container == null) {
            return "";
        }
        String above = of(container);
        return above.isEmpty() ? step(object) : above + "/" + step(object);
    }

    private String step(EObject object) {
        EStructuralFeature feature = object.eContainingFeature();
        return feature.isMany() ? feature.getName() + "[" + key(object, feature) + "]" : feature.getName();
    }

    private String key(EObject object, EStructuralFeature feature) {
        Listed list = lists.computeIfAbsent(new Place(object.eContainer(), feature), ElementPaths::list);
        String own = ElementPath.ownKey(object);
        boolean alone = own != null && USABLE.matcher(own).matches() && list.keys().get(own) == 1;
        return alone ? own : String.valueOf(list.places().get(object));
    }

    private static Listed list(Place place) {
        Listed list = new Listed(new HashMap<>(), new HashMap<>());
        List<?> members = (List<?>) place.holder().eGet(place.feature());
        for (int i = 0; i < members.size(); i++) {
            list.keys().merge(String.valueOf(ElementPath.ownKey((EObject) members.get(i))), 1, Integer::sum);
            list.places().put((EObject) members.get(i), i);
        }
        return list;
    }
}
