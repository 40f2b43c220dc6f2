/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.preferences;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CopyOnWriteArrayList;

import org.eclipse.core.runtime.preferences.DefaultScope;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.ferrule.quantity.LengthUnit;

/**
 * The units in which figures are shown beside what was typed, and their decimals. The listeners are told when the user
 * changes them. What is typed is never changed by them, and no verdict depends on them.
 */
public final class UnitPreferences {

    /** The node of the preferences. */
    public static final String NODE = "org.ferrule.ui";

    /** The units that a user may choose, in the order in which they are shown. */
    public static final List<LengthUnit> CHOICES = List.of(LengthUnit.MILLIMETRE, LengthUnit.INCH, LengthUnit.FRENCH);

    /** The most decimals of any unit. */
    public static final int MOST_DECIMALS = 6;

    private static final String SHOWN = "units.shown.";
    private static final String DECIMALS = "units.decimals.";

    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();

    /** Creates the preferences, with their defaults. */
    public UnitPreferences() {
        IEclipsePreferences defaults = DefaultScope.INSTANCE.getNode(NODE);
        putDefault(defaults, LengthUnit.MILLIMETRE, true, 3);
        putDefault(defaults, LengthUnit.INCH, true, 4);
        putDefault(defaults, LengthUnit.FRENCH, false, 1);
        InstanceScope.INSTANCE.getNode(NODE).addPreferenceChangeListener(event -> listeners.forEach(Runnable::run));
    }

    private static void putDefault(IEclipsePreferences defaults, LengthUnit unit, boolean shown, int decimals) {
        defaults.putBoolean(shownKey(unit), shown);
        defaults.putInt(decimalsKey(unit), decimals);
    }

    /** Returns the units to show, in their order; never none. */
    public List<LengthUnit> units() {
        List<LengthUnit> shown = new ArrayList<>();
        CHOICES.stream().filter(this::isShown).forEach(shown::add);
        return shown.isEmpty() ? List.of(LengthUnit.MILLIMETRE) : List.copyOf(shown);
    }

    /** Returns the decimals of the unit, 0 to {@link #MOST_DECIMALS}. */
    public int decimals(LengthUnit unit) {
        int decimals = value(decimalsKey(unit)).map(UnitPreferences::number).orElse(3);
        return Math.max(0, Math.min(MOST_DECIMALS, decimals));
    }

    /** Adds a listener that is told on any change. */
    public void addListener(Runnable listener) {
        listeners.add(listener);
    }

    /** Removes a listener. */
    public void removeListener(Runnable listener) {
        listeners.remove(listener);
    }

    /** Returns the key of whether a unit is shown. */
    public static String shownKey(LengthUnit unit) {
        return SHOWN + unit.symbol();
    }

    /** Returns the key of the decimals of a unit. */
    public static String decimalsKey(LengthUnit unit) {
        return DECIMALS + unit.symbol();
    }

    private boolean isShown(LengthUnit unit) {
        return value(shownKey(unit)).map(Boolean::parseBoolean).orElse(false);
    }

    private static Optional<String> value(String key) {
        String fallback = DefaultScope.INSTANCE.getNode(NODE).get(key, null);
        return Optional.ofNullable(InstanceScope.INSTANCE.getNode(NODE).get(key, fallback));
    }

    private static int number(String text) {
        try {
            return Integer.parseInt(text);
        } catch (NumberFormatException e) {
            return 3;
        }
    }
}
