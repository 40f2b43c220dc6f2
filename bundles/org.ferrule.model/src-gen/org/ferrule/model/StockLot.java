/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stock Lot</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * Units of one item with the same production identifiers that lie in the same place.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.StockLot#getLot <em>Lot</em>}</li>
 *   <li>{@link org.ferrule.model.StockLot#getExpiry <em>Expiry</em>}</li>
 *   <li>{@link org.ferrule.model.StockLot#getQuantity <em>Quantity</em>}</li>
 *   <li>{@link org.ferrule.model.StockLot#getLocation <em>Location</em>}</li>
 *   <li>{@link org.ferrule.model.StockLot#getSerial <em>Serial</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getStockLot()
 * @model annotation="https://ferrule.invalid/annotation/1 label='Lot'"
 * @generated
 */
public interface StockLot extends Element
{
	/**
	 * Returns the value of the '<em><b>Lot</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The lot or batch number as printed; not given where the box bears none.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lot</em>' attribute.
	 * @see #setLot(String)
	 * @see org.ferrule.model.ModelPackage#getStockLot_Lot()
	 * @model
	 * @generated
	 */
	String getLot();

	/**
	 * Sets the value of the '{@link org.ferrule.model.StockLot#getLot <em>Lot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lot</em>' attribute.
	 * @see #getLot()
	 * @generated
	 */
	void setLot(String value);

	/**
	 * Returns the value of the '<em><b>Expiry</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The last day on which the units may be used, ISO 8601: year-month-day; not given where none is printed.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Expiry</em>' attribute.
	 * @see #setExpiry(String)
	 * @see org.ferrule.model.ModelPackage#getStockLot_Expiry()
	 * @model annotation="https://ferrule.invalid/annotation/1 text='date'"
	 * @generated
	 */
	String getExpiry();

	/**
	 * Sets the value of the '{@link org.ferrule.model.StockLot#getExpiry <em>Expiry</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Expiry</em>' attribute.
	 * @see #getExpiry()
	 * @generated
	 */
	void setExpiry(String value);

	/**
	 * Returns the value of the '<em><b>Quantity</b></em>' attribute.
	 * The default value is <code>"1"</code>.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many there are.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Quantity</em>' attribute.
	 * @see #setQuantity(int)
	 * @see org.ferrule.model.ModelPackage#getStockLot_Quantity()
	 * @model default="1" required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 least='1'"
	 * @generated
	 */
	int getQuantity();

	/**
	 * Sets the value of the '{@link org.ferrule.model.StockLot#getQuantity <em>Quantity</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Quantity</em>' attribute.
	 * @see #getQuantity()
	 * @generated
	 */
	void setQuantity(int value);

	/**
	 * Returns the value of the '<em><b>Location</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * Where they lie.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Location</em>' attribute.
	 * @see #setLocation(String)
	 * @see org.ferrule.model.ModelPackage#getStockLot_Location()
	 * @model
	 * @generated
	 */
	String getLocation();

	/**
	 * Sets the value of the '{@link org.ferrule.model.StockLot#getLocation <em>Location</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Location</em>' attribute.
	 * @see #getLocation()
	 * @generated
	 */
	void setLocation(String value);

	/**
	 * Returns the value of the '<em><b>Serial</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The serial number, if one is printed; then there is one unit.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Serial</em>' attribute.
	 * @see #setSerial(String)
	 * @see org.ferrule.model.ModelPackage#getStockLot_Serial()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Serial number'"
	 * @generated
	 */
	String getSerial();

	/**
	 * Sets the value of the '{@link org.ferrule.model.StockLot#getSerial <em>Serial</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Serial</em>' attribute.
	 * @see #getSerial()
	 * @generated
	 */
	void setSerial(String value);

} // StockLot
