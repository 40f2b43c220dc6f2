/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.fit.effect;

import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.preference.BooleanFieldEditor;
import org.eclipse.jface.preference.FieldEditorPreferencePage;
import org.eclipse.ui.IWorkbench;
import org.eclipse.ui.IWorkbenchPreferencePage;
import org.eclipse.ui.preferences.ScopedPreferenceStore;

/** The preference page about what is shown before saving. */
public final class EffectPreferencePage extends FieldEditorPreferencePage implements IWorkbenchPreferencePage {

    /** Creates the page. */
    public EffectPreferencePage() {
        super(GRID);
    }

    @Override
    public void init(IWorkbench workbench) {
        ScopedPreferenceStore store = new ScopedPreferenceStore(InstanceScope.INSTANCE, EffectPreference.NODE);
        store.setDefault(EffectPreference.KEY, true);
        setPreferenceStore(store);
    }

    @Override
    protected void createFieldEditors() {
        addField(new BooleanFieldEditor(EffectPreference.KEY,
                "Before saving, show the &verdicts that change in open charts", getFieldEditorParent()));
    }
}
