/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.shelf;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CommandWrapper;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.forms.IManagedForm;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.StockItem;
import org.ferrule.model.StockLot;
import org.ferrule.ui.document.DocumentChange;
import org.ferrule.ui.edit.DocumentPage;

/** What is on a shelf: a field for scanning, a filter, and a table that is edited in place. */
public final class ShelfPage extends DocumentPage {

    /** Id of the page. */
    public static final String ID = "shelf";

    private ScanField scan;
    private Text filter;
    private Label counts;
    private ShelfTable table;
    private Button addItem;
    private Button addLot;
    private Button remove;
    private Button takeIn;
    private SheetExchange sheets;

    ShelfPage(ShelfEditor editor) {
        super(editor, ID, "Shelf");
    }

    @Override
    protected void fill(IManagedForm form) {
        FormToolkit toolkit = form.getToolkit();
        Composite body = form.getForm().getBody();
        GridLayoutFactory.fillDefaults().margins(8, 6).spacing(0, 6).applyTo(body);
        Composite head = toolkit.createComposite(body);
        GridLayoutFactory.fillDefaults().numColumns(4).margins(1, 1).spacing(8, 4).applyTo(head);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(head);
        scan = new ScanField(toolkit, head, session(), this::added);
        toolkit.createLabel(head, "Filter");
        filter = new Text(head, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        filter.setMessage("Words of a name, lot, place or state, such as \u201cexpired\u201d");
        GridDataFactory.fillDefaults().grab(true, false).span(3, 1).align(SWT.FILL, SWT.CENTER).applyTo(filter);
        filter.addModifyListener(event -> refresh());
        table = new ShelfTable(body, session(), scan.line());
        GridDataFactory.fillDefaults().grab(true, true).hint(300, 120).applyTo(table.control());
        buttons(toolkit, body);
        table.onSelect(this::enable);
        refresh();
    }

    private void buttons(FormToolkit toolkit, Composite body) {
        Composite row = toolkit.createComposite(body);
        GridLayoutFactory.fillDefaults().numColumns(6).margins(1, 0).applyTo(row);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(row);
        addItem = button(toolkit, row, "Add item", this::addItem);
        addLot = button(toolkit, row, "Add lot", this::addLot);
        remove = button(toolkit, row, "Remove", this::remove);
        sheets = new SheetExchange(getSite().getShell(), session());
        takeIn = button(toolkit, row, "Import...", sheets::takeIn);
        takeIn.setToolTipText("Takes a CSV or XLSX sheet over, after showing what it changes");
        button(toolkit, row, "Export...", sheets::export)
                .setToolTipText("Writes the shelf as a CSV or XLSX sheet, a row for each lot");
        counts = toolkit.createLabel(row, "", SWT.RIGHT);
        GridDataFactory.fillDefaults().align(SWT.FILL, SWT.CENTER).grab(true, false).applyTo(counts);
    }

    private static Button button(FormToolkit toolkit, Composite row, String text, Runnable action) {
        Button button = toolkit.createButton(row, text, SWT.PUSH);
        button.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> action.run()));
        return button;
    }

    private ShelfDocument shelf() {
        return (ShelfDocument) session().document().orElseThrow();
    }

    private void refresh() {
        List<LotRow> rows = LotRow.all(shelf());
        table.show(rows, filter.getText());
        LocalDate today = LocalDate.now();
        int units = rows.stream().filter(row -> row.lot() != null).mapToInt(row -> row.lot().getQuantity()).sum();
        long expired = rows.stream().filter(row -> row.states(today).contains(ShelfState.EXPIRED)).count();
        long below = shelf().getItems().stream().filter(item -> isBelowPar(rows, item, today)).count();
        counts.setText("Items: " + shelf().getItems().size() + "   Units: " + units + "   Expired lots: " + expired
                + "   Items below par: " + below);
        enable();
    }

    private static boolean isBelowPar(List<LotRow> rows, StockItem item, LocalDate today) {
        return rows.stream().anyMatch(r -> r.item() == item && r.states(today).contains(ShelfState.BELOW_PAR));
    }

    private void enable() {
        boolean editable = session().editable();
        addItem.setEnabled(editable);
        takeIn.setEnabled(editable);
        addLot.setEnabled(editable && table.selected().isPresent());
        remove.setEnabled(editable && table.selected().isPresent());
    }

    /** The box that was scanned is shown, whatever is filtered. */
    private void added(StockLot lot) {
        if (!filter.getText().isEmpty()) {
            filter.setText("");
        }
        refresh();
        table.select(lot);
    }

    private void addItem() {
        StockItem item = ModelFactory.eINSTANCE.createStockItem();
        item.setId(freeId());
        item.setName("New item");
        execute("Addition of an item",
                AddCommand.create(session().domain(), shelf(), Literals.SHELF_DOCUMENT__ITEMS, item));
        filter.setText("");
        refresh();
        table.select(new LotRow(item, null));
        table.edit(ShelfColumn.NAME);
    }

    /** One that no item has: after a removal their number alone might be the id of the last. */
    private String freeId() {
        Set<String> taken = shelf().getItems().stream().map(StockItem::getId).collect(Collectors.toSet());
        return IntStream.iterate(shelf().getItems().size() + 1, number -> number + 1)
                .mapToObj(number -> "item-" + number).filter(id -> !taken.contains(id)).findFirst().orElseThrow();
    }

    private void addLot() {
        StockLot lot = ModelFactory.eINSTANCE.createStockLot();
        lot.setQuantity(1);
        StockItem item = table.selected().orElseThrow().item();
        execute("Addition of a lot", AddCommand.create(session().domain(), item, Literals.STOCK_ITEM__LOTS, lot));
        refresh();
        table.select(lot);
        table.edit(ShelfColumn.LOT);
    }

    private void remove() {
        LotRow row = table.selected().orElseThrow();
        EObject removed = row.lot() == null ? row.item() : row.lot();
        execute(row.lot() == null ? "Removal of an item" : "Removal of a lot",
                RemoveCommand.create(session().domain(), removed));
    }

    private void execute(String name, Command command) {
        session().execute(new CommandWrapper(name, "", command));
    }

    /** Returns what exchanges sheets. */
    public SheetExchange sheets() {
        return sheets;
    }

    /** Returns what is said below the scan field. */
    public String message() {
        return scan.line().text();
    }

    @Override
    public void documentChanged(DocumentChange change) {
        super.documentChanged(change);
        if (!session().broken() && !table.control().isDisposed()) {
            refresh();
        }
    }

    @Override
    public boolean reveal(EObject object, EStructuralFeature feature) {
        Optional<LotRow> row = LotRow.all(shelf()).stream().filter(r -> r.lot() == object || r.item() == object)
                .findFirst();
        Optional<ShelfColumn> column = ShelfColumn.of(feature);
        if (row.isEmpty() || feature != null && column.isEmpty()) {
            return false;
        }
        if (!filter.getText().isEmpty()) {
            filter.setText("");
        }
        table.select(row.get());
        return table.show(column.orElse(ShelfColumn.NAME));
    }

    /** A click into another field of the page brings the focus there, also when it activates the editor. */
    @Override
    public void setFocus() {
        Control focused = table.control().getDisplay().getFocusControl();
        while (focused != null && focused != getPartControl()) {
            focused = focused.getParent();
        }
        if (focused == null) {
            scan.control().setFocus();
        }
    }
}
