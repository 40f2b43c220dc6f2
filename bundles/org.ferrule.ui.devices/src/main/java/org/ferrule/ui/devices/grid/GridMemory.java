/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.grid;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.StringJoiner;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.nebula.widgets.nattable.hideshow.ColumnHideShowLayer;
import org.eclipse.nebula.widgets.nattable.layer.event.IStructuralChangeEvent;
import org.eclipse.nebula.widgets.nattable.reorder.ColumnReorderLayer;
import org.ferrule.ui.devices.sheet.SheetColumn;
import org.osgi.service.prefs.BackingStoreException;

/**
 * Remembers in the preferences in which order the columns stand, how wide they are, and which are hidden: each as
 * {@code id:width}, hidden ones with a minus before.
 */
final class GridMemory {

    private static final String NODE = "org.ferrule.ui.devices";
    private static final String HIDDEN = "-";

    private final GridLayers layers;
    private final List<SheetColumn> columns;
    private final Runnable measure;
    private final String key;
    private String known = "";

    /**
     * Creates a memory.
     *
     * @param measure gives the columns their first widths
     */
    GridMemory(GridLayers layers, List<SheetColumn> columns, Runnable measure, String key) {
        this.layers = layers;
        this.measure = measure;
        this.columns = columns;
        this.key = key;
    }

    private IEclipsePreferences node() {
        return InstanceScope.INSTANCE.getNode(NODE);
    }

    /** Brings the columns into the remembered state, and remembers every change from now on. */
    void connect() {
        restore(node().get(key, ""));
        known = state();
        layers.grid().addLayerListener(event -> {
            if (event instanceof IStructuralChangeEvent change && change.isHorizontalStructureChanged()) {
                remember();
            }
        });
    }

    private void remember() {
        String state = state();
        if (!state.equals(known)) {
            known = state;
            node().put(key, state);
            flush();
        }
    }

    private void flush() {
        try {
            node().flush();
        } catch (BackingStoreException e) {
            ILog.of(GridMemory.class).error("The columns cannot be remembered", e);
        }
    }

    private String state() {
        StringJoiner state = new StringJoiner(",");
        for (int index : layers.order().getColumnIndexOrder()) {
            state.add((layers.hiding().isColumnIndexHidden(index) ? HIDDEN : "") + columns.get(index).id() + ":"
                    + layers.cells().getColumnWidthByPosition(index));
        }
        return state.toString();
    }

    private void restore(String state) {
        Map<String, Integer> places = IntStream.range(0, columns.size()).boxed()
                .collect(Collectors.toMap(i -> columns.get(i).id(), i -> i));
        Map<Integer, Boolean> hidden = new LinkedHashMap<>();
        Map<Integer, Integer> widths = new HashMap<>();
        for (String entry : state.split(",")) {
            String[] parts = entry.replaceFirst("^" + HIDDEN, "").split(":");
            Integer index = places.get(parts[0]);
            if (index != null && parts.length == 2 && parts[1].matches("\\d{1,4}")) {
                widths.put(index, Integer.parseInt(parts[1]));
                hidden.put(index, entry.startsWith(HIDDEN));
            }
        }
        arrange(hidden);
        widths.forEach((index, width) -> layers.cells().setColumnWidthByPosition(index, width));
    }

    /** Columns that are new since then stand behind the others. Loading an order makes the layers forget all widths. */
    private void arrange(Map<Integer, Boolean> hidden) {
        List<Integer> order = new ArrayList<>(hidden.keySet());
        IntStream.range(0, columns.size()).filter(index -> !hidden.containsKey(index)).forEach(order::add);
        Properties properties = new Properties();
        properties.setProperty(ColumnReorderLayer.PERSISTENCE_KEY_COLUMN_INDEX_ORDER, joined(order));
        properties.setProperty(ColumnHideShowLayer.PERSISTENCE_KEY_HIDDEN_COLUMN_INDEXES,
                joined(order.stream().filter(index -> hidden.getOrDefault(index, false)).toList()));
        layers.order().loadState("", properties);
        layers.hiding().loadState("", properties);
        measure.run();
    }

    private static String joined(List<Integer> indexes) {
        return indexes.stream().map(String::valueOf).collect(Collectors.joining(","));
    }

    /** Brings the columns back into their first order and widths, all of them shown. */
    void reset() {
        layers.hiding().showAllColumns();
        arrange(Map.of());
        remember();
    }
}
