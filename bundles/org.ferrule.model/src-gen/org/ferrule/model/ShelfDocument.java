/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Shelf Document</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * What the laboratory has: items, lots, expiry, par levels.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.ShelfDocument#getLibraries <em>Libraries</em>}</li>
 *   <li>{@link org.ferrule.model.ShelfDocument#getCurrency <em>Currency</em>}</li>
 *   <li>{@link org.ferrule.model.ShelfDocument#getItems <em>Items</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getShelfDocument()
 * @model annotation="https://ferrule.invalid/annotation/1 suffix='.shelf.json' format='ferrule.shelf' label='Shelf'"
 * @generated
 */
public interface ShelfDocument extends Document
{
	/**
	 * Returns the value of the '<em><b>Libraries</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The device libraries, as paths relative to this document, with /.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Libraries</em>' attribute list.
	 * @see org.ferrule.model.ModelPackage#getShelfDocument_Libraries()
	 * @model unique="false"
	 *        annotation="https://ferrule.invalid/annotation/1 refers='file .devices.json' label='Device libraries'"
	 * @generated
	 */
	EList<String> getLibraries();

	/**
	 * Returns the value of the '<em><b>Currency</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The currency of the prices: three letters (ISO 4217).
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Currency</em>' attribute.
	 * @see #setCurrency(String)
	 * @see org.ferrule.model.ModelPackage#getShelfDocument_Currency()
	 * @model
	 * @generated
	 */
	String getCurrency();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ShelfDocument#getCurrency <em>Currency</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Currency</em>' attribute.
	 * @see #getCurrency()
	 * @generated
	 */
	void setCurrency(String value);

	/**
	 * Returns the value of the '<em><b>Items</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.StockItem}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The items.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Items</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getShelfDocument_Items()
	 * @model containment="true"
	 * @generated
	 */
	EList<StockItem> getItems();

} // ShelfDocument
