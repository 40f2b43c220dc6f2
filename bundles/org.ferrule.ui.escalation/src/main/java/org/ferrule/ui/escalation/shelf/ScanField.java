/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.shelf;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Consumer;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.events.SelectionListener;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.forms.widgets.FormToolkit;
import org.ferrule.model.StockItem;
import org.ferrule.model.StockLot;
import org.ferrule.shelf.code.CodeException;
import org.ferrule.shelf.code.ProductCode;
import org.ferrule.ui.document.DocumentSession;

/** The field into which codes are scanned, typed or pasted; Enter, which scanners send too, puts the box on the shelf. */
final class ScanField {

    private final DocumentSession session;
    private final Scanning scanning;
    private final Consumer<StockLot> added;
    private final Text text;
    private final Button create;
    private final ScanLine line;
    private ProductCode unknown;

    /**
     * Creates the field.
     *
     * @param parent has a layout of four columns
     * @param added hears which lot a box went to
     */
    ScanField(FormToolkit toolkit, Composite parent, DocumentSession session, Consumer<StockLot> added) {
        this.session = session;
        this.scanning = new Scanning(session, LocalDate.now());
        this.added = added;
        toolkit.createLabel(parent, "Scan");
        text = toolkit.createText(parent, "", SWT.BORDER | SWT.SINGLE);
        text.setMessage("Scan, type or paste the code of a box, then Enter");
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(text);
        text.addListener(SWT.DefaultSelection, event -> scan());
        toolkit.createButton(parent, "Add box", SWT.PUSH)
                .addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> scan()));
        create = toolkit.createButton(parent, "As new item", SWT.PUSH);
        create.setToolTipText("Puts the box on the shelf as an item that is known by nothing but its code");
        create.addSelectionListener(SelectionListener.widgetSelectedAdapter(event -> createItem()));
        create.setEnabled(false);
        line = new ScanLine(parent);
    }

    Text control() {
        return text;
    }

    ScanLine line() {
        return line;
    }

    private void scan() {
        forget();
        String typed = text.getText().strip();
        if (typed.isEmpty() || !session.editable()) {
            return;
        }
        try {
            put(scanning.read(typed));
        } catch (CodeException e) {
            line.point(e);
            text.selectAll();
        }
    }

    private void put(ProductCode code) {
        Optional<StockItem> item = scanning.item(code);
        if (code.di().isEmpty()) {
            line.tell("This code names no product: scan the other code of the box too.");
            text.setText("");
        } else if (item.isEmpty()) {
            unknown = code;
            create.setEnabled(true);
            line.refuse("No item has the code " + code.di().get() + ".");
            text.selectAll();
        } else if (scanning.there(item.get(), code).isPresent()) {
            line.refuse("The box with the serial number " + code.serial().orElseThrow()
                    + " is on the shelf already; it is not counted twice.");
            text.selectAll();
            added.accept(scanning.there(item.get(), code).orElseThrow());
        } else {
            tell(item.get(), scanning.put(item.get(), code), code);
        }
    }

    private void createItem() {
        StockLot lot = scanning.putNew(unknown);
        tell((StockItem) lot.eContainer(), lot, unknown);
        forget();
    }

    private void tell(StockItem item, StockLot lot, ProductCode code) {
        text.setText("");
        text.setFocus();
        String name = item.getName() == null ? item.getId() : item.getName();
        String words = name + ", lot " + code.lot().orElse("not stated") + code.expiry().map(e -> ", use by " + e)
                .orElse("") + ": now " + lot.getQuantity()
                + (lot.getLocation() == null ? "" : " at " + lot.getLocation());
        if (code.expiry().filter(e -> e.isBefore(LocalDate.now())).isPresent()) {
            line.refuse("Expired. " + words);
        } else {
            line.tell("\u2713 " + words);
        }
        added.accept(lot);
    }

    private void forget() {
        unknown = null;
        create.setEnabled(false);
    }
}
