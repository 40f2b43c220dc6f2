/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */

package org.ferrule.ui.escalation.shelf;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.common.command.Command;
import org.eclipse.emf.common.command.CommandWrapper;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.ferrule.model.ModelFactory;
import org.ferrule.model.ModelPackage.Literals;
import org.ferrule.model.ShelfDocument;
import org.ferrule.model.StockItem;
import org.ferrule.model.StockLot;
import org.ferrule.shelf.code.CodeException;
import org.ferrule.shelf.code.CodeReader;
import org.ferrule.shelf.code.ProductCode;
import org.ferrule.ui.document.DocumentSession;

/** Puts scanned boxes on a shelf: to the lot that is there already, else as a new lot of its item. */
final class Scanning {

    private final DocumentSession session;
    private final LocalDate today;
    private ProductCode first;

    Scanning(DocumentSession session, LocalDate today) {
        this.session = session;
        this.today = today;
    }

    /**
     * Reads a code, together with the one before it if that did not name a product.
     *
     * @throws CodeException naming the place that is wrong
     */
    ProductCode read(String text) throws CodeException {
        ProductCode code = CodeReader.read(text, today);
        ProductCode joined = first == null ? code : first.join(code);
        first = joined.di().isPresent() ? null : joined;
        return joined;
    }

    /** Returns the item that a code names. */
    Optional<StockItem> item(ProductCode code) {
        return shelf().getItems().stream().filter(item -> code.di().equals(identifier(item))).findFirst();
    }

    /** The device identifier, also where the item states the whole code; as stated where nobody can read it. */
    private Optional<String> identifier(StockItem item) {
        try {
            return item.getCode() == null ? Optional.empty() : CodeReader.read(item.getCode(), today).di();
        } catch (CodeException e) {
            return Optional.of(item.getCode());
        }
    }

    private ShelfDocument shelf() {
        return (ShelfDocument) session.document().orElseThrow();
    }

    /** Returns the box itself, where it stands on the shelf already: there is only one with its serial number. */
    Optional<StockLot> there(StockItem item, ProductCode code) {
        return item.getLots().stream().filter(lot -> code.serial().isPresent()
                && code.serial().get().equals(lot.getSerial()) && lot.getQuantity() > 0).findFirst();
    }

    /** Adds the box to its item, and returns the lot. */
    StockLot put(StockItem item, ProductCode code) {
        Optional<StockLot> known = item.getLots().stream().filter(lot -> isOf(lot, code)).findFirst();
        int count = code.quantity().orElse(1);
        StockLot lot = known.orElseGet(() -> lot(item, code, count));
        execute(item, known.isPresent()
                ? SetCommand.create(session.domain(), lot, Literals.STOCK_LOT__QUANTITY, lot.getQuantity() + count)
                : AddCommand.create(session.domain(), item, Literals.STOCK_ITEM__LOTS, lot));
        return lot;
    }

    /** Adds an item that is known by nothing but its code, with the box, and returns the lot. */
    StockLot putNew(ProductCode code) {
        StockItem item = ModelFactory.eINSTANCE.createStockItem();
        String di = code.di().orElseThrow();
        item.setId("item-" + di);
        item.setCode(di);
        StockLot lot = lot(item, code, code.quantity().orElse(1));
        item.getLots().add(lot);
        execute(item, AddCommand.create(session.domain(), shelf(), Literals.SHELF_DOCUMENT__ITEMS, item));
        return lot;
    }

    private void execute(StockItem item, Command command) {
        CompoundCommand all = new CompoundCommand();
        all.append(command);
        session.execute(new CommandWrapper("Scan of " + (item.getName() == null ? item.getId() : item.getName()), "",
                all));
    }

    /** One with a serial number is never counted to another. */
    private static boolean isOf(StockLot lot, ProductCode code) {
        return code.serial().isEmpty() && lot.getSerial() == null
                && Objects.equals(lot.getLot(), code.lot().orElse(null))
                && Objects.equals(lot.getExpiry(), code.expiry().map(LocalDate::toString).orElse(null));
    }

    /** It is laid where the other boxes of the item lie. */
    private static StockLot lot(StockItem item, ProductCode code, int count) {
        StockLot lot = ModelFactory.eINSTANCE.createStockLot();
        code.lot().ifPresent(lot::setLot);
        code.expiry().map(LocalDate::toString).ifPresent(lot::setExpiry);
        code.serial().ifPresent(lot::setSerial);
        lot.setQuantity(count);
        item.getLots().stream().map(StockLot::getLocation).filter(Objects::nonNull).findFirst()
                .ifPresent(lot::setLocation);
        return lot;
    }
}
