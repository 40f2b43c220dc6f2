/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.devices.revision;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.viewers.ColumnLabelProvider;
import org.eclipse.jface.viewers.ITreeContentProvider;
import org.eclipse.jface.viewers.TreeViewer;
import org.eclipse.jface.viewers.TreeViewerColumn;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.TreeColumn;
import org.ferrule.engine.revision.Difference;

/** Differences under what they are about, with both sides in columns. */
final class DifferenceTree {

    /** So many devices are shown with their differences at once; of more, only the devices. */
    private static final int MOST_EXPANDED = 500;

    private final TreeViewer viewer;
    private final DifferenceWords words;
    private Map<EObject, List<Difference>> groups = Map.of();

    DifferenceTree(Composite parent, DifferenceWords words) {
        this.words = words;
        viewer = new TreeViewer(parent, SWT.MULTI | SWT.FULL_SELECTION | SWT.BORDER | SWT.H_SCROLL | SWT.V_SCROLL);
        viewer.getTree().setHeaderVisible(true);
        GridDataFactory.fillDefaults().grab(true, true).hint(300, 80).applyTo(viewer.getTree());
        column("Device and value", 300, DifferenceWords::place);
        column("There", 190, DifferenceWords::before);
        column("Here", 190, DifferenceWords::after);
        column("Difference", 220, words::growth);
        viewer.setUseHashlookup(true);
        viewer.setContentProvider(new Content());
        viewer.setInput(this);
    }

    private void column(String title, int width, Function<Difference, String> text) {
        TreeViewerColumn column = new TreeViewerColumn(viewer, SWT.NONE);
        TreeColumn widget = column.getColumn();
        widget.setText(title);
        widget.setWidth(width);
        widget.setResizable(true);
        boolean first = viewer.getTree().getColumnCount() == 1;
        column.setLabelProvider(new ColumnLabelProvider() {
            @Override
            public String getText(Object element) {
                return element instanceof Difference difference ? text.apply(difference)
                        : first ? group((EObject) element) : "";
            }
        });
    }

    private String group(EObject entry) {
        int count = groups.getOrDefault(entry, List.of()).size();
        boolean whole = count == 1 && DifferenceWords.isWhole(groups.get(entry).get(0));
        return DifferenceWords.entry(entry) + (whole ? "" : "   (" + count + ")");
    }

    /** Names the sides. */
    void name(String there, String here) {
        viewer.getTree().getColumn(1).setText(there);
        viewer.getTree().getColumn(2).setText(here);
    }

    /** Shows differences that have all of the words; what was collapsed or selected stays so. */
    void show(List<Difference> differences, List<String> filter) {
        Set<Object> closed = new HashSet<>(groups.keySet());
        List.of(viewer.getExpandedElements()).forEach(closed::remove);
        Map<EObject, List<Difference>> now = new LinkedHashMap<>();
        differences.stream().filter(difference -> words.matches(difference, filter))
                .forEach(difference -> now.computeIfAbsent(difference.entry(), e -> new ArrayList<>()).add(difference));
        groups = now;
        viewer.refresh();
        if (groups.size() <= MOST_EXPANDED) {
            viewer.setExpandedElements(groups.keySet().stream().filter(entry -> !closed.contains(entry)).toArray());
        }
    }

    /** The differences that are selected, those under a selected device included, each once. */
    List<Difference> selection() {
        Set<Difference> selected = new LinkedHashSet<>();
        for (Object element : viewer.getStructuredSelection().toArray()) {
            selected.addAll(element instanceof Difference difference ? List.of(difference)
                    : groups.getOrDefault(element, List.of()));
        }
        return List.copyOf(selected);
    }

    /** The difference that is selected first, or that is first under what is selected. */
    Optional<Difference> first() {
        return selection().stream().findFirst();
    }

    /** Sets what is done when something else is selected, and on a double click or Enter. */
    void onSelect(Runnable selected, Runnable opened) {
        viewer.addSelectionChangedListener(event -> selected.run());
        viewer.addOpenListener(event -> opened.run());
    }

    TreeViewer viewer() {
        return viewer;
    }

    private final class Content implements ITreeContentProvider {

        @Override
        public Object[] getElements(Object input) {
            return groups.keySet().toArray();
        }

        @Override
        public Object[] getChildren(Object parent) {
            return groups.getOrDefault(parent, List.of()).toArray();
        }

        @Override
        public Object getParent(Object element) {
            return Stream.of(element).filter(Difference.class::isInstance).map(Difference.class::cast)
                    .map(Difference::entry).findFirst().orElse(null);
        }

        @Override
        public boolean hasChildren(Object element) {
            return groups.containsKey(element);
        }
    }
}
