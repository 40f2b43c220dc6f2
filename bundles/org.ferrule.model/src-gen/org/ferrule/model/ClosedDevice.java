/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Closed Device</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * A device that was used in a closed case.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.ClosedDevice#getId <em>Id</em>}</li>
 *   <li>{@link org.ferrule.model.ClosedDevice#getItem <em>Item</em>}</li>
 *   <li>{@link org.ferrule.model.ClosedDevice#getLot <em>Lot</em>}</li>
 *   <li>{@link org.ferrule.model.ClosedDevice#getExpiry <em>Expiry</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getClosedDevice()
 * @model annotation="https://ferrule.invalid/annotation/1 label='Used device'"
 * @generated
 */
public interface ClosedDevice extends Element
{
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of the device.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see org.ferrule.model.ModelPackage#getClosedDevice_Id()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Device'"
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ClosedDevice#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

	/**
	 * Returns the value of the '<em><b>Item</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of the item of the shelf.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Item</em>' attribute.
	 * @see #setItem(String)
	 * @see org.ferrule.model.ModelPackage#getClosedDevice_Item()
	 * @model
	 * @generated
	 */
	String getItem();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ClosedDevice#getItem <em>Item</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Item</em>' attribute.
	 * @see #getItem()
	 * @generated
	 */
	void setItem(String value);

	/**
	 * Returns the value of the '<em><b>Lot</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The lot.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lot</em>' attribute.
	 * @see #setLot(String)
	 * @see org.ferrule.model.ModelPackage#getClosedDevice_Lot()
	 * @model
	 * @generated
	 */
	String getLot();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ClosedDevice#getLot <em>Lot</em>}' attribute.
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
	 * When it would have expired, ISO 8601: year-month-day.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Expiry</em>' attribute.
	 * @see #setExpiry(String)
	 * @see org.ferrule.model.ModelPackage#getClosedDevice_Expiry()
	 * @model annotation="https://ferrule.invalid/annotation/1 text='date'"
	 * @generated
	 */
	String getExpiry();

	/**
	 * Sets the value of the '{@link org.ferrule.model.ClosedDevice#getExpiry <em>Expiry</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Expiry</em>' attribute.
	 * @see #getExpiry()
	 * @generated
	 */
	void setExpiry(String value);

} // ClosedDevice
