/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import java.math.BigDecimal;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Stock Item</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * One kind of box on the shelf, with the lots of it that are there; or a piece of equipment.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.StockItem#getId <em>Id</em>}</li>
 *   <li>{@link org.ferrule.model.StockItem#getName <em>Name</em>}</li>
 *   <li>{@link org.ferrule.model.StockItem#getDevice <em>Device</em>}</li>
 *   <li>{@link org.ferrule.model.StockItem#getEquipment <em>Equipment</em>}</li>
 *   <li>{@link org.ferrule.model.StockItem#getCode <em>Code</em>}</li>
 *   <li>{@link org.ferrule.model.StockItem#getParLevel <em>Par Level</em>}</li>
 *   <li>{@link org.ferrule.model.StockItem#getPrice <em>Price</em>}</li>
 *   <li>{@link org.ferrule.model.StockItem#getLots <em>Lots</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getStockItem()
 * @model annotation="https://ferrule.invalid/annotation/1 label='Item'"
 * @generated
 */
public interface StockItem extends Sourced
{
	/**
	 * Returns the value of the '<em><b>Id</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name by which other elements of the document refer to it; unique among its kind.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Id</em>' attribute.
	 * @see #setId(String)
	 * @see org.ferrule.model.ModelPackage#getStockItem_Id()
	 * @model required="true"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Id'"
	 * @generated
	 */
	String getId();

	/**
	 * Sets the value of the '{@link org.ferrule.model.StockItem#getId <em>Id</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Id</em>' attribute.
	 * @see #getId()
	 * @generated
	 */
	void setId(String value);

	/**
	 * Returns the value of the '<em><b>Name</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name that people read.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Name</em>' attribute.
	 * @see #setName(String)
	 * @see org.ferrule.model.ModelPackage#getStockItem_Name()
	 * @model
	 * @generated
	 */
	String getName();

	/**
	 * Sets the value of the '{@link org.ferrule.model.StockItem#getName <em>Name</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Name</em>' attribute.
	 * @see #getName()
	 * @generated
	 */
	void setName(String value);

	/**
	 * Returns the value of the '<em><b>Device</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The device in the libraries: id, or path!id where two libraries share an id.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Device</em>' attribute.
	 * @see #setDevice(String)
	 * @see org.ferrule.model.ModelPackage#getStockItem_Device()
	 * @model
	 * @generated
	 */
	String getDevice();

	/**
	 * Sets the value of the '{@link org.ferrule.model.StockItem#getDevice <em>Device</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Device</em>' attribute.
	 * @see #getDevice()
	 * @generated
	 */
	void setDevice(String value);

	/**
	 * Returns the value of the '<em><b>Equipment</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The name of what is no device, such as a console, as roles ask for it.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Equipment</em>' attribute.
	 * @see #setEquipment(String)
	 * @see org.ferrule.model.ModelPackage#getStockItem_Equipment()
	 * @model
	 * @generated
	 */
	String getEquipment();

	/**
	 * Sets the value of the '{@link org.ferrule.model.StockItem#getEquipment <em>Equipment</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Equipment</em>' attribute.
	 * @see #getEquipment()
	 * @generated
	 */
	void setEquipment(String value);

	/**
	 * Returns the value of the '<em><b>Code</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The device identifier of the code on the box, such as a GTIN.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Code</em>' attribute.
	 * @see #setCode(String)
	 * @see org.ferrule.model.ModelPackage#getStockItem_Code()
	 * @model annotation="https://ferrule.invalid/annotation/1 label='Device identifier'"
	 * @generated
	 */
	String getCode();

	/**
	 * Sets the value of the '{@link org.ferrule.model.StockItem#getCode <em>Code</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Code</em>' attribute.
	 * @see #getCode()
	 * @generated
	 */
	void setCode(String value);

	/**
	 * Returns the value of the '<em><b>Par Level</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * How many usable units should be there.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Par Level</em>' attribute.
	 * @see #isSetParLevel()
	 * @see #unsetParLevel()
	 * @see #setParLevel(int)
	 * @see org.ferrule.model.ModelPackage#getStockItem_ParLevel()
	 * @model unsettable="true"
	 *        annotation="https://ferrule.invalid/annotation/1 least='0' label='Par level'"
	 * @generated
	 */
	int getParLevel();

	/**
	 * Sets the value of the '{@link org.ferrule.model.StockItem#getParLevel <em>Par Level</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Par Level</em>' attribute.
	 * @see #isSetParLevel()
	 * @see #unsetParLevel()
	 * @see #getParLevel()
	 * @generated
	 */
	void setParLevel(int value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.StockItem#getParLevel <em>Par Level</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetParLevel()
	 * @see #getParLevel()
	 * @see #setParLevel(int)
	 * @generated
	 */
	void unsetParLevel();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.StockItem#getParLevel <em>Par Level</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Par Level</em>' attribute is set.
	 * @see #unsetParLevel()
	 * @see #getParLevel()
	 * @see #setParLevel(int)
	 * @generated
	 */
	boolean isSetParLevel();

	/**
	 * Returns the value of the '<em><b>Price</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The price of one unit.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Price</em>' attribute.
	 * @see #setPrice(BigDecimal)
	 * @see org.ferrule.model.ModelPackage#getStockItem_Price()
	 * @model annotation="https://ferrule.invalid/annotation/1 least='0'"
	 * @generated
	 */
	BigDecimal getPrice();

	/**
	 * Sets the value of the '{@link org.ferrule.model.StockItem#getPrice <em>Price</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Price</em>' attribute.
	 * @see #getPrice()
	 * @generated
	 */
	void setPrice(BigDecimal value);

	/**
	 * Returns the value of the '<em><b>Lots</b></em>' containment reference list.
	 * The list contents are of type {@link org.ferrule.model.StockLot}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The lots that are there.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Lots</em>' containment reference list.
	 * @see org.ferrule.model.ModelPackage#getStockItem_Lots()
	 * @model containment="true"
	 * @generated
	 */
	EList<StockLot> getLots();

} // StockItem
