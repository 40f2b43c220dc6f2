/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.look;

import java.util.List;
import java.util.Locale;
import java.util.MissingResourceException;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.edit.provider.IItemLabelProvider;
import org.ferrule.model.edit.ModelEditPlugin;
import org.ferrule.model.edit.ModelItemProviderAdapterFactory;

/** What classes, features and objects of the model are called on the screen. */
public final class ModelLabels {

    private ModelLabels() {
    }

    /** Returns what the feature is called, such as {@code Outer diameter}. */
    public static String feature(EStructuralFeature feature) {
        return text(key(feature, "feature"), feature.getName());
    }

    /** Returns what the feature means, in a sentence; empty if nothing is said about it. */
    public static String description(EStructuralFeature feature) {
        return text(key(feature, "description"), "");
    }

    private static String key(EStructuralFeature feature, String what) {
        return "_UI_" + feature.getEContainingClass().getName() + "_" + feature.getName() + "_" + what;
    }

    /** Returns what objects of the class are called, such as {@code Shaft section}. */
    public static String type(EClass type) {
        return text("_UI_" + type.getName() + "_type", type.getName());
    }

    /** Returns what the object is called. */
    public static String object(ModelItemProviderAdapterFactory adapters, EObject object) {
        IItemLabelProvider labels = (IItemLabelProvider) adapters.adapt(object, IItemLabelProvider.class);
        return labels == null ? type(object.eClass()) : labels.getText(object);
    }

    /** Returns what objects are called in the label of a command, such as {@code marker} or {@code 2 objects}. */
    public static String several(List<EObject> objects) {
        return objects.size() == 1 ? type(objects.get(0).eClass()).toLowerCase(Locale.ENGLISH)
                : objects.size() + " objects";
    }

    private static String text(String key, String otherwise) {
        try {
            return ModelEditPlugin.INSTANCE.getString(key);
        } catch (MissingResourceException e) {
            return otherwise;
        }
    }
}
