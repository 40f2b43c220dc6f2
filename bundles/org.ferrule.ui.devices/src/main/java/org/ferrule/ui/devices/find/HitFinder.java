/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.find;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.regex.Pattern;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.ferrule.model.DeviceParts;
import org.ferrule.model.Features;
import org.ferrule.ui.devices.part.Keys;
import org.ferrule.ui.devices.sheet.CellReading;
import org.ferrule.ui.look.ModelLabels;

/** Finds the fields of devices in which a text stands: those that they state themselves, not what they inherit. */
public final class HitFinder {

    private final Search search;
    private final Pattern pattern;
    private final List<Hit> hits = new ArrayList<>();

    private HitFinder(Search search) {
        this.search = search;
        pattern = search.compiled();
    }

    /**
     * Returns the hits in devices or lines and their parts.
     *
     * @throws java.util.regex.PatternSyntaxException if the search is a pattern that cannot be read
     */
    public static List<Hit> find(Search search, List<? extends DeviceParts> devices) {
        HitFinder finder = new HitFinder(search);
        if (!search.text().isEmpty()) {
            devices.forEach(finder::device);
        }
        return finder.hits;
    }

    private void device(DeviceParts device) {
        object(device, device);
        Iterator<EObject> parts = device.eAllContents();
        parts.forEachRemaining(part -> object(device, part));
    }

    private void object(DeviceParts device, EObject object) {
        for (EStructuralFeature feature : Features.inDocumentOrder(object.eClass())) {
            if (feature instanceof EAttribute attribute && isSearched(attribute) && object.eIsSet(attribute)) {
                values(device, object, attribute);
            }
        }
    }

    private static boolean isSearched(EAttribute attribute) {
        return Features.isFigure(attribute) || attribute.getEAttributeType().getInstanceClass() == String.class;
    }

    private void values(DeviceParts device, EObject object, EAttribute attribute) {
        if (object.eGet(attribute) instanceof List<?> entries) {
            for (int i = 0; i < entries.size(); i++) {
                field(device, object, attribute, i, String.valueOf(entries.get(i)));
            }
        } else {
            field(device, object, attribute, Hit.WHOLE, String.valueOf(object.eGet(attribute)));
        }
    }

    private void field(DeviceParts device, EObject object, EAttribute attribute, int index, String text) {
        if (search.finds(pattern, text)) {
            String after = search.replace(pattern, text);
            boolean key = "id".equals(attribute.getName()) && object == device
                    || "name".equals(attribute.getName()) && object != device;
            hits.add(new Hit(String.valueOf(device.getId()), object, attribute, index,
                    where(device, object, attribute) + (index < 0 ? "" : ", entry " + (index + 1)), text, after,
                    CellReading.of(attribute, after), key ? Keys.naming(object).size() : 0));
        }
    }

    private static String where(DeviceParts device, EObject object, EAttribute attribute) {
        String field = ModelLabels.feature(attribute);
        if (object == device) {
            return field;
        }
        EStructuralFeature name = object.eClass().getEStructuralFeature("name");
        Object own = name == null ? null : object.eGet(name);
        return ModelLabels.type(object.eClass()) + (own == null ? "" : " " + own) + ": " + field;
    }
}
