/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Used Unit</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One unit taken from the shelf.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.UsedUnit#getRole <em>Role</em>}</li>
 *   <li>{@link org.ferrule.model.UsedUnit#getItem <em>Item</em>}</li>
 *   <li>{@link org.ferrule.model.UsedUnit#getLot <em>Lot</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getUsedUnit()
 * @model
 * @generated
 */
public interface UsedUnit extends Element
{
	/**
	 * Returns the value of the '<em><b>Role</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of the role that it played.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Role</em>' attribute.
	 * @see #setRole(String)
	 * @see org.ferrule.model.ModelPackage#getUsedUnit_Role()
	 * @model required="true"
	 * @generated
	 */
	String getRole();

	/**
	 * Sets the value of the '{@link org.ferrule.model.UsedUnit#getRole <em>Role</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Role</em>' attribute.
	 * @see #getRole()
	 * @generated
	 */
	void setRole(String value);

	/**
	 * Returns the value of the '<em><b>Item</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The id of the item of the shelf.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Item</em>' attribute.
	 * @see #setItem(String)
	 * @see org.ferrule.model.ModelPackage#getUsedUnit_Item()
	 * @model required="true"
	 * @generated
	 */
	String getItem();

	/**
	 * Sets the value of the '{@link org.ferrule.model.UsedUnit#getItem <em>Item</em>}' attribute.
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
	 * The lot; not given when nobody noted it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lot</em>' attribute.
	 * @see #setLot(String)
	 * @see org.ferrule.model.ModelPackage#getUsedUnit_Lot()
	 * @model
	 * @generated
	 */
	String getLot();

	/**
	 * Sets the value of the '{@link org.ferrule.model.UsedUnit#getLot <em>Lot</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lot</em>' attribute.
	 * @see #getLot()
	 * @generated
	 */
	void setLot(String value);

} // UsedUnit
