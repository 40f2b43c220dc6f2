/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.edit.contents;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;

import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableColumn;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.model.Features;
import org.ferrule.quantity.Dimension;
import org.ferrule.ui.look.ModelLabels;

/** Members of a group side by side, to be compared; one that is opened is shown with its fields. */
final class GroupTable {

    private static final int LEAST_COLUMN = 60;
    private static final int LARGEST_COLUMN = 260;

    private final Table table;
    private List<EObject> members = List.of();

    /** Creates the table; the listener hears which member is opened, by Enter or a double click. */
    GroupTable(FormToolkit toolkit, Composite parent, Consumer<EObject> opened) {
        table = toolkit.createTable(parent, SWT.SINGLE | SWT.FULL_SELECTION | SWT.BORDER | SWT.V_SCROLL | SWT.H_SCROLL);
        table.setHeaderVisible(true);
        table.setLinesVisible(true);
        table.addSelectionListener(SelectionListener
                .widgetDefaultSelectedAdapter(event -> opened.accept(members.get(table.getSelectionIndex()))));
    }

    Control control() {
        return table;
    }

    /** Shows members of a group. */
    void show(EReference group, List<EObject> compared) {
        members = List.copyOf(compared);
        List<EAttribute> attributes = Features.inDocumentOrder(group.getEReferenceType()).stream()
                .filter(EAttribute.class::isInstance).map(EAttribute.class::cast).toList();
        table.setRedraw(false);
        table.removeAll();
        List.of(table.getColumns()).forEach(TableColumn::dispose);
        attributes.forEach(attribute -> new TableColumn(table, SWT.NONE).setText(ModelLabels.feature(attribute)));
        members.forEach(member -> new TableItem(table, SWT.NONE).setText(texts(member, attributes)));
        for (TableColumn column : table.getColumns()) {
            column.pack();
            column.setWidth(Math.max(LEAST_COLUMN, Math.min(LARGEST_COLUMN, column.getWidth())));
        }
        table.setRedraw(true);
    }

    private static String[] texts(EObject member, List<EAttribute> attributes) {
        List<String> texts = new ArrayList<>();
        attributes.forEach(attribute -> texts.add(member.eIsSet(attribute) ? text(member.eGet(attribute)) : ""));
        return texts.toArray(String[]::new);
    }

    private static String text(Object value) {
        if (value instanceof List<?> several) {
            return several.stream().map(GroupTable::text).collect(Collectors.joining(", "));
        }
        if (value instanceof Boolean flag) {
            return flag ? "yes" : "no";
        }
        return value instanceof Enumerator word ? word.getLiteral()
                : value instanceof Dimension dimension ? dimension.text() : String.valueOf(value);
    }
}
