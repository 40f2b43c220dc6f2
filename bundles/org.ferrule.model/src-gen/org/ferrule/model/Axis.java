/*
 * Copyright (c) 2026 the Ferrule authors.
 * SPDX-License-Identifier: EPL-2.0
 */
package org.ferrule.model;

import org.eclipse.emf.common.util.EList;

/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Axis</b></em>'.
 * <!-- end-user-doc -->
 *
 * <!-- begin-model-doc -->
 * The devices along one side of the chart.
 * <!-- end-model-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link org.ferrule.model.Axis#getKinds <em>Kinds</em>}</li>
 *   <li>{@link org.ferrule.model.Axis#getDevices <em>Devices</em>}</li>
 *   <li>{@link org.ferrule.model.Axis#getHidden <em>Hidden</em>}</li>
 *   <li>{@link org.ferrule.model.Axis#getGroupBy <em>Group By</em>}</li>
 *   <li>{@link org.ferrule.model.Axis#getSortBy <em>Sort By</em>}</li>
 * </ul>
 *
 * @see org.ferrule.model.ModelPackage#getAxis()
 * @model
 * @generated
 */
public interface Axis extends Element
{
	/**
	 * Returns the value of the '<em><b>Kinds</b></em>' attribute list.
	 * The list contents are of type {@link org.ferrule.model.DeviceKind}.
	 * The literals are from the enumeration {@link org.ferrule.model.DeviceKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The kinds of device that are taken when no device is named.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Kinds</em>' attribute list.
	 * @see org.ferrule.model.DeviceKind
	 * @see org.ferrule.model.ModelPackage#getAxis_Kinds()
	 * @model unique="false"
	 * @generated
	 */
	EList<DeviceKind> getKinds();

	/**
	 * Returns the value of the '<em><b>Devices</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The devices by id: id, id#lumen, or path!id where two libraries share an id.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Devices</em>' attribute list.
	 * @see org.ferrule.model.ModelPackage#getAxis_Devices()
	 * @model unique="false"
	 * @generated
	 */
	EList<String> getDevices();

	/**
	 * Returns the value of the '<em><b>Hidden</b></em>' attribute list.
	 * The list contents are of type {@link java.lang.String}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * The devices, written the same way, that are left out.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Hidden</em>' attribute list.
	 * @see org.ferrule.model.ModelPackage#getAxis_Hidden()
	 * @model unique="false"
	 *        annotation="https://ferrule.invalid/annotation/1 label='Hidden devices'"
	 * @generated
	 */
	EList<String> getHidden();

	/**
	 * Returns the value of the '<em><b>Group By</b></em>' attribute.
	 * The default value is <code>"none"</code>.
	 * The literals are from the enumeration {@link org.ferrule.model.Grouping}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the devices are grouped by.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Group By</em>' attribute.
	 * @see org.ferrule.model.Grouping
	 * @see #isSetGroupBy()
	 * @see #unsetGroupBy()
	 * @see #setGroupBy(Grouping)
	 * @see org.ferrule.model.ModelPackage#getAxis_GroupBy()
	 * @model default="none" unsettable="true"
	 * @generated
	 */
	Grouping getGroupBy();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Axis#getGroupBy <em>Group By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Group By</em>' attribute.
	 * @see org.ferrule.model.Grouping
	 * @see #isSetGroupBy()
	 * @see #unsetGroupBy()
	 * @see #getGroupBy()
	 * @generated
	 */
	void setGroupBy(Grouping value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Axis#getGroupBy <em>Group By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetGroupBy()
	 * @see #getGroupBy()
	 * @see #setGroupBy(Grouping)
	 * @generated
	 */
	void unsetGroupBy();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Axis#getGroupBy <em>Group By</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Group By</em>' attribute is set.
	 * @see #unsetGroupBy()
	 * @see #getGroupBy()
	 * @see #setGroupBy(Grouping)
	 * @generated
	 */
	boolean isSetGroupBy();

	/**
	 * Returns the value of the '<em><b>Sort By</b></em>' attribute.
	 * The default value is <code>"as listed"</code>.
	 * The literals are from the enumeration {@link org.ferrule.model.Sorting}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * <!-- begin-model-doc -->
	 * What the devices are sorted by within a group.
	 * <!-- end-model-doc -->
	 * @return the value of the '<em>Sort By</em>' attribute.
	 * @see org.ferrule.model.Sorting
	 * @see #isSetSortBy()
	 * @see #unsetSortBy()
	 * @see #setSortBy(Sorting)
	 * @see org.ferrule.model.ModelPackage#getAxis_SortBy()
	 * @model default="as listed" unsettable="true"
	 * @generated
	 */
	Sorting getSortBy();

	/**
	 * Sets the value of the '{@link org.ferrule.model.Axis#getSortBy <em>Sort By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Sort By</em>' attribute.
	 * @see org.ferrule.model.Sorting
	 * @see #isSetSortBy()
	 * @see #unsetSortBy()
	 * @see #getSortBy()
	 * @generated
	 */
	void setSortBy(Sorting value);

	/**
	 * Unsets the value of the '{@link org.ferrule.model.Axis#getSortBy <em>Sort By</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #isSetSortBy()
	 * @see #getSortBy()
	 * @see #setSortBy(Sorting)
	 * @generated
	 */
	void unsetSortBy();

	/**
	 * Returns whether the value of the '{@link org.ferrule.model.Axis#getSortBy <em>Sort By</em>}' attribute is set.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return whether the value of the '<em>Sort By</em>' attribute is set.
	 * @see #unsetSortBy()
	 * @see #getSortBy()
	 * @see #setSortBy(Sorting)
	 * @generated
	 */
	boolean isSetSortBy();

} // Axis
